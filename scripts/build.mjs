// Bundles the command line into dist/: one CommonJS file, so that a cold start reads little, beside the kernel's wasm.
import { copyFile, mkdir } from "node:fs/promises";
import { createRequire } from "node:module";
import { build } from "esbuild";

const require = createRequire(import.meta.url);
const { version } = require("../package.json");

await mkdir("dist", { recursive: true });
await copyFile(require.resolve("manifold-3d/manifold.wasm"), "dist/manifold.wasm");
await build({
  entryPoints: ["src/cli/main.ts"],
  outfile: "dist/tramwright.cjs",
  bundle: true,
  platform: "node",
  format: "cjs",
  target: "node20",
  define: { TRAMWRIGHT_VERSION: JSON.stringify(version), "import.meta.url": "__moduleUrl" },
  banner: { js: '#!/usr/bin/env node\nconst __moduleUrl = require("node:url").pathToFileURL(__filename).href;' },
  supported: { "dynamic-import": false },
  legalComments: "none",
  logLevel: "warning",
});
