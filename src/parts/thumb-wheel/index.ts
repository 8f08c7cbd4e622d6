import { THREADS } from "../../catalogue/threads.ts";
import { washerName } from "../../catalogue/washer-name.ts";
import { row } from "../../core/table.ts";
import { fumes } from "../cautions.ts";
import { defineFamily } from "../define-family.ts";
import type { Case } from "../family.ts";
import { parameterGivens, printerGivens } from "../givens.ts";
import { checks } from "./checks.ts";
import { type Derived, derive, dimensions, nutOf, washerOf } from "./dimensions.ts";
import { type Parameters, schema } from "./parameters.ts";
import { pieces } from "./pieces.ts";

export const thumbWheel = defineFamily({
  name: "thumb-wheel",
  title: "Thumb wheel of a tram bolt",
  purpose: "Turns the nut under a tram mount by hand: ten lobes, each a known step of the plate's height.",
  orientation: "slider face on the bed, nut pocket up: the spring presses the nut along the layers' axis",
  solid: true,
  sketch: `
        outer face, from below               side, as printed
            _  _                         |<---- 2 R_k ---->|
          (    | )   ten lobes,          +---+  nut   +----+  ---
         (  /--\\  )  a mark on each      |   |  s_p   |    |  h_k
          ( \\__/ )   clockwise lowers    |   +--+  +--+    |  f_w
            -  -     the plate           +------+--+-------+  ---
                                           slider face, D_f
`,
  schema,
  derive,
  dimensions,
  givens,
  checks,
  pieces,
  hardware: ({ given }) => [
    { item: `${given.bolt} ${given.lockNut ? "lock nut" : "nut"}`, count: given.count, note: "drawn into the pocket" },
    {
      item: washerName(given.bolt, washerOf(given)),
      count: given.count,
      note: "slides on the bracket's underside",
    },
  ],
  cautions: ({ given }) => ["not-lifting-gear", "springs", ...fumes(given.material.key), "own-responsibility"],
  limits: ({ derived }) => [
    `one lobe is ${derived.perLobe.toFixed(3)} mm of plate height`,
    "clockwise, seen on the outer face from below, lowers the plate",
  ],
  material: (given) => given.material.key,
});

function givens({ given, printer }: Case<Parameters, Derived>) {
  const thread = row(THREADS, given.bolt).values;
  const nut = nutOf(given);
  const washer = washerOf(given);
  const nutSource = given.nut === undefined ? (given.lockNut ? "din-985" : "iso-4032") : "your preset";
  return [
    ...parameterGivens(schema, given),
    ...printerGivens(printer),
    { symbol: "P", value: thread.pitch, unit: "mm", meaning: "thread pitch", source: "iso-261" },
    { symbol: "d_medium", value: thread.mediumHole, unit: "mm", meaning: "medium clearance hole", source: "iso-273" },
    { symbol: "m", value: nut.height, unit: "mm", meaning: "nut height", source: nutSource },
    { symbol: "s", value: nut.acrossFlats, unit: "mm", meaning: "nut across flats", source: nutSource },
    { symbol: "OD_w", value: washer.outside, unit: "mm", meaning: "slider washer", source: "iso-7093-1" },
  ] as const;
}
