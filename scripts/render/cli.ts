import { readFileSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { readStl } from "../../tests/support/read-stl.ts";
import { VIEWS, type View } from "./camera.ts";
import { png } from "./png.ts";
import { rasterise } from "./rasterise.ts";
import { readCut, section } from "./section.ts";

const USAGE = `npx tsx scripts/render/cli.ts part.stl picture.png [--view ${Object.keys(VIEWS).join("|")}]
    [--azimuth deg --elevation deg] [--cut x=0|y=0|z=5] [--size 900x700]`;

async function main(): Promise<void> {
  const text = { type: "string" } as const;
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { view: text, azimuth: text, elevation: text, cut: text, size: text },
  });
  const [from, to] = positionals;
  const view = values.view ?? "iso";
  if (from === undefined || to === undefined || !(view in VIEWS)) throw new Error(USAGE);
  const [width = 900, height = 700] = (values.size ?? "900x700").split("x").map(Number);
  const camera = {
    azimuth: Number(values.azimuth ?? VIEWS[view as View].azimuth),
    elevation: Number(values.elevation ?? VIEWS[view as View].elevation),
  };
  const mesh = readStl(readFileSync(from));
  const cut = values.cut === undefined ? undefined : readCut(values.cut);
  const shown = cut === undefined ? mesh : await section(mesh, cut);
  writeFileSync(to, png(rasterise(shown, camera, { width, height, cut })));
  console.log(`${to}: ${shown.triangles.length / 3} facets, ${width} x ${height}`);
}

main().catch((error: Error) => {
  console.error(error.message);
  process.exitCode = 1;
});
