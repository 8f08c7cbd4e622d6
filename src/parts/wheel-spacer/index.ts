import { THREADS } from "../../catalogue/threads.ts";
import { row } from "../../core/table.ts";
import { TORQUE_FACTOR } from "../../mechanics/clamp-force.ts";
import { fumes } from "../cautions.ts";
import { defineFamily } from "../define-family.ts";
import { parameterGivens, printerGivens } from "../givens.ts";
import { checks } from "./checks.ts";
import { derive } from "./derive.ts";
import { dimensions } from "./dimensions.ts";
import { schema } from "./parameters.ts";
import { pieces } from "./pieces.ts";

export const wheelSpacer = defineFamily({
  name: "wheel-spacer",
  title: "Wheel spacer and eccentric bush",
  purpose: "Holds a wheel off its plate at a set distance; as a bush it also lets the wheel be turned against the bar.",
  orientation: "axis upright: the bolt presses along the axis, across no seam",
  solid: true,
  sketch: `
        |<-- OD -->|                 |<-- AF -->|
        +--+    +--+  ---            +----------+  ---
        |  | ID |  |  L_s            |  |  ID |  | u_e
        +--+    +--+  ---            +--+-----+-+  ---
      plain: between plate             |  D_b  |   L_b
      and shim                         +-------+   bush, bore off by eps
`,
  schema,
  derive,
  dimensions,
  givens: ({ given, printer }) => [
    ...parameterGivens(schema, given),
    ...printerGivens(printer),
    {
      symbol: "d",
      value: row(THREADS, given.bolt).values.diameter,
      unit: "mm",
      meaning: "bolt diameter",
      source: "iso-261",
    },
    { symbol: "K", value: TORQUE_FACTOR, unit: "", meaning: "torque factor of a dry bolt", source: "shigley: 8" },
    {
      symbol: "p_s",
      value: given.material.values.washerPressure,
      unit: "MPa",
      meaning: "pressure the material bears for years",
      source: "material-data",
    },
  ],
  checks,
  pieces,
  hardware: () => [],
  cautions: ({ given }) => ["not-lifting-gear", ...fumes(given.material.key), "own-responsibility"],
  limits: ({ given, derived }) => [
    `${given.bolt} axle bolt on this ${given.kind === "bush" ? "bush" : "ring"}: at most ${derived.torqueAllowed.toFixed(2)} N·m`,
    ...(given.kind === "bush"
      ? [
          `hole of the plate for it: ${derived.plateHole.toFixed(1)} mm, round and through`,
          "the groove down a corner marks the thick side, away from the bolt",
        ]
      : []),
  ],
  material: (given) => given.material.key,
});
