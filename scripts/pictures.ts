// Renders the pictures of the README from what the demo wrote into out/.
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { readStl } from "../tests/support/read-stl.ts";
import { png } from "./render/png.ts";
import { rasterise } from "./render/rasterise.ts";

const PICTURES: readonly {
  readonly part: string;
  readonly picture: string;
  readonly azimuth: number;
  readonly elevation: number;
}[] = [
  { part: "shelf-lift-left", picture: "screw-foot", azimuth: 150, elevation: 35 },
  { part: "camera-carriage", picture: "wheel-plate", azimuth: 150, elevation: 35 },
  { part: "glaze-dryer-slot", picture: "tram-mount", azimuth: 150, elevation: 30 },
  { part: "glaze-dryer-slot-thumb-wheel", picture: "thumb-wheel", azimuth: 30, elevation: 40 },
  { part: "feeder-bush", picture: "wheel-spacer", azimuth: 30, elevation: 30 },
];

mkdirSync("docs/pictures", { recursive: true });
for (const { part, picture, azimuth, elevation } of PICTURES) {
  const mesh = readStl(readFileSync(`out/${part}.stl`));
  writeFileSync(
    `docs/pictures/${picture}.png`,
    png(rasterise(mesh, { azimuth, elevation }, { width: 640, height: 480 })),
  );
  console.log(`docs/pictures/${picture}.png from out/${part}.stl`);
}
copyFileSync("out/seed-bench/belts.svg", "docs/pictures/seed-bench-belts.svg");
console.log("docs/pictures/seed-bench-belts.svg from out/seed-bench/belts.svg");
