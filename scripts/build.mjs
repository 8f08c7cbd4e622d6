// Bundles the command line into dist/: a small start file, the program itself in one file so that a cold start reads
// little, what V8 compiled of it in a trial run, and the kernel's wasm; and beside it the library, for import and for
// require, with its types. All of it is made in a folder beside dist/ and put in its place at the end, so that a run of
// the tool meanwhile finds the whole old or the whole new program.

import { spawnSync } from "node:child_process";
import { chmod, copyFile, mkdtemp, readdir, rename, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { declarations } from "./declarations.mjs";
import { kernelAnywhere } from "./kernel-anywhere.mjs";

const require = createRequire(import.meta.url);
const { version } = require("../package.json");

const common = {
  bundle: true,
  platform: "node",
  format: "cjs",
  target: "node20",
  supported: { "dynamic-import": false },
  minify: true,
  legalComments: "none",
  logLevel: "warning",
};

const MODULE_URL = 'const __moduleUrl = require("node:url").pathToFileURL(__filename).href;';

/** What is taken of the modelling library, in its place: the whole of it is as large as all parts together. */
const modelingInPart = {
  name: "modeling-in-part",
  setup: ({ onResolve }) => {
    const path = join(import.meta.dirname, "stand-ins", "modeling.cjs");
    onResolve({ filter: /^@jscad\/modeling$/ }, () => ({ path }));
  },
};

/** What packs is loaded when something is packed. */
const packingLater = {
  name: "packing-later",
  setup: ({ onResolve }) => {
    const path = join(import.meta.dirname, "stand-ins", "packing.cjs");
    onResolve({ filter: /^fflate\/browser$/ }, ({ importer }) => (importer === path ? undefined : { path }));
  },
};

/** Writes the whole program into a folder. */
async function bundle(folder) {
  await copyFile(require.resolve("manifold-3d/manifold.wasm"), join(folder, "manifold.wasm"));
  await build({
    ...common,
    entryPoints: ["src/cli/main.ts"],
    outfile: join(folder, "tramwright.cjs"),
    define: { TRAMWRIGHT_VERSION: JSON.stringify(version) },
    banner: { js: "#!/usr/bin/env node" },
  });
  await build({ ...common, entryPoints: ["src/cli/builder.ts"], outfile: join(folder, "builder.cjs") });
  await build({
    ...common,
    entryPoints: ["src/cli/bodies.ts"],
    outfile: join(folder, "bodies.cjs"),
    define: { "import.meta.url": "__moduleUrl" },
    plugins: [modelingInPart],
    banner: { js: MODULE_URL },
  });
  // The program, and the small one that answers where nothing has changed since the last run.
  for (const [entry, name] of [
    ["run", "program"],
    ["made-already", "made-already"],
  ])
    await build({
      ...common,
      entryPoints: [`src/cli/${entry}.ts`],
      outfile: join(folder, `${name}.cjs`),
      define: { "import.meta.url": "__moduleUrl" },
      plugins: [modelingInPart, packingLater],
      alias: {
        assert: "./scripts/stand-ins/assert.mjs",
        cliui: "./scripts/stand-ins/columns.mjs",
        "string-width": "./scripts/stand-ins/width.mjs",
        "@noble/hashes/sha2.js": "./scripts/stand-ins/hashes.mjs",
      },
      banner: { js: MODULE_URL },
    });
}

/** Writes the library into a folder, as both kinds of module. No import of Node is left in it, so that pages can have it. */
async function library(folder) {
  const shared = {
    ...common,
    entryPoints: ["src/library/index.ts"],
    platform: "browser",
    mainFields: ["module", "main"],
    supported: {},
    plugins: [modelingInPart, kernelAnywhere],
  };
  const define = { TRAMWRIGHT_VERSION: JSON.stringify(version) };
  await build({ ...shared, define, format: "esm", outfile: join(folder, "index.js") });
  await build({
    ...shared,
    define: { ...define, "import.meta.url": "__moduleUrl" },
    outfile: join(folder, "index.cjs"),
    banner: { js: MODULE_URL },
  });
}

const MACHINE = ["presets/stages/seed-bench.yaml"];
/** What the trial runs make, and for which program: parts, a machine, and that machine again. */
const TRIALS = [
  [["screw-foot", "tram-mount", "wheel-plate"], "program"],
  [MACHINE, "program"],
  [MACHINE, "made-already"],
];

/** Runs the program, which keeps beside itself what V8 compiles where it is told so. Returns whether it ended well. */
function ran(folder, words, keep) {
  const env = { ...process.env, ...(keep === undefined ? {} : { TRAMWRIGHT_KEEP_COMPILED: keep }) };
  return spawnSync(process.execPath, [join(folder, "tramwright.cjs"), ...words], { env, stdio: "ignore" }).status === 0;
}

/** Makes something of each kind, so that what a first `make` needs is compiled beforehand, beside the program. */
async function tryOut(folder) {
  const trial = await mkdtemp(join(tmpdir(), "tramwright-build-"));
  // A Node whose V8 has other functions under the names that are used for this goes without.
  if (!ran(folder, ["make"], "kernel") || !ran(folder, ["make", "wheel-spacer", "-o", trial]))
    for (const name of await readdir(folder)) if (/^manifold-.*\.compiled$/.test(name)) await rm(join(folder, name));
  for (const [made, program] of TRIALS)
    if (!ran(folder, ["make", ...made, "-o", trial, "--quiet"], program))
      throw new Error(`the trial run of ${made.join(", ")} did not end well`);
  await rm(trial, { recursive: true });
}

/** Puts the new folder where the old one is; a build that runs beside this one may be first, and is replaced. */
async function swap(folder, target) {
  for (let attempt = 0; ; attempt++) {
    const old = `${folder}-old-${attempt}`;
    await rename(target, old).catch(() => undefined);
    try {
      await rename(folder, target);
      return;
    } catch (thrown) {
      if (attempt === 5) throw thrown;
    } finally {
      await rm(old, { recursive: true, force: true });
    }
  }
}

const fresh = await mkdtemp(".dist-");
try {
  await bundle(fresh);
  await library(fresh);
  await declarations(join(fresh, "types"));
  await chmod(fresh, 0o755);
  await tryOut(fresh);
  await swap(fresh, "dist");
} finally {
  await rm(fresh, { recursive: true, force: true });
}
