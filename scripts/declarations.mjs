import { spawnSync } from "node:child_process";
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join, relative } from "node:path";

const ROOT = join(import.meta.dirname, "..");
const COMPILER = createRequire(import.meta.url).resolve("typescript/package.json");
const ENTRY = "library/index";

/** Writes the types of the library into a folder: those alone that its entry leads to, for import and for require. */
export async function declarations(folder) {
  const all = await mkdtemp(join(tmpdir(), "tramwright-types-"));
  try {
    const words = ["-p", join(ROOT, "scripts", "declarations.json"), "--outDir", all];
    const { status, stdout } = spawnSync(process.execPath, [join(dirname(COMPILER), "bin", "tsc"), ...words]);
    if (status !== 0) throw new Error(`the types of the library were not written:\n${stdout}`);
    await reached(all, folder);
  } finally {
    await rm(all, { recursive: true, force: true });
  }
}

/** Copies what the entry leads to, file by file. */
async function reached(all, folder) {
  const seen = new Set();
  const ahead = [ENTRY];
  for (let name = ahead.pop(); name !== undefined; name = ahead.pop()) {
    if (seen.has(name)) continue;
    seen.add(name);
    const text = await readFile(join(all, `${name}.d.ts`), "utf8");
    const named = [...text.matchAll(/(?:from |import\()"([^"]+)"/g)].map((match) => match[1]);
    const strangers = named.filter((one) => !one.startsWith("."));
    // Nothing is installed with the package, so its types must stand alone.
    if (strangers.length > 0) throw new Error(`the types in ${name} need ${strangers.join(", ")}`);
    ahead.push(...named.map((one) => relative(all, join(all, dirname(name), one.replace(/\.ts$/, "")))));
    await write(join(folder, `${name}.d.ts`), text.replace(/(from |import\()"(\.[^"]+)\.ts"/g, '$1"$2.js"'));
    await write(join(folder, `${name}.d.cts`), text.replace(/(from |import\()"(\.[^"]+)\.ts"/g, '$1"$2.cjs"'));
  }
}

async function write(file, text) {
  await mkdir(dirname(file), { recursive: true });
  await writeFile(file, text);
}
