// Bundles the command line into dist/: a small start file, the program itself in one file so that a cold start reads
// little, what V8 compiled of it in a trial run, and the kernel's wasm.

import { spawnSync } from "node:child_process";
import { copyFile, mkdir, mkdtemp, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";

const require = createRequire(import.meta.url);
const { version } = require("../package.json");

const common = {
  bundle: true,
  platform: "node",
  format: "cjs",
  target: "node20",
  supported: { "dynamic-import": false },
  minifyWhitespace: true,
  legalComments: "none",
  logLevel: "warning",
};

await rm("dist", { recursive: true, force: true });
await mkdir("dist");
await copyFile(require.resolve("manifold-3d/manifold.wasm"), "dist/manifold.wasm");
await build({
  ...common,
  entryPoints: ["src/cli/main.ts"],
  outfile: "dist/tramwright.cjs",
  define: { TRAMWRIGHT_VERSION: JSON.stringify(version) },
  banner: { js: "#!/usr/bin/env node" },
});
await build({
  ...common,
  entryPoints: ["src/cli/run.ts"],
  outfile: "dist/program.cjs",
  define: { "import.meta.url": "__moduleUrl" },
  banner: { js: 'const __moduleUrl = require("node:url").pathToFileURL(__filename).href;' },
});

// The trial run makes one part of each kind, so that what a first `make` needs is compiled beforehand.
const trial = await mkdtemp(join(tmpdir(), "tramwright-build-"));
const words = ["make", "screw-foot", "tram-mount", "wheel-plate", "-o", trial, "--quiet"];
const environment = { ...process.env, TRAMWRIGHT_KEEP_COMPILED: "1" };
const { status } = spawnSync(process.execPath, ["dist/tramwright.cjs", ...words], {
  env: environment,
  stdio: "ignore",
});
await rm(trial, { recursive: true });
if (status !== 0) throw new Error(`the trial run ended with ${status}`);
