import { fumes } from "../cautions.ts";
import { defineFamily } from "../define-family.ts";
import { checks } from "./checks.ts";
import { derive } from "./derive.ts";
import { dimensions } from "./dimensions.ts";
import { givens } from "./givens.ts";
import { schema } from "./parameters.ts";
import { pieces } from "./pieces.ts";
import { companions, hardware, limits } from "./shopping.ts";

export const wheelPlate = defineFamily({
  name: "wheel-plate",
  title: "Wheel carriage plate",
  purpose:
    "Carries V wheels that run on the edges of a bar, fixed ones on one side and eccentric ones on the other, and the bars of a stage bolted across it.",
  orientation: "outer face on the bed, wheel side up: axle holes upright, counterbores open upward, nothing overhangs",
  sketch: `
       |<------ B_x ------>|            along the travel, from above:
       |   |<-- C -->|     |
       | (o)  |   |  (O)   | ---            wheel    bar    wheel
       |      |   |        |               +----+ +------+ +----+  z_w
       |  =   |bar|   =    |  h            |    |<|      |>|    |
       |      |   |        |               +----+ +------+ +----+
       | (o)  |   |  (O)   | ---          L_p ||    g_b     || u_e  ---
       +-------------------+           +--------------------------+ t_p
       o fixed   O eccentric   = arm   +--------------------------+ ---
`,
  schema,
  derive,
  dimensions,
  givens,
  checks,
  pieces,
  hardware,
  companions,
  cautions: ({ given }) => [
    "not-lifting-gear",
    "stage-can-fall",
    "nips",
    ...(given.placeTemperature > 30 ? (["softens"] as const) : []),
    ...fumes(given.material.key),
    "own-responsibility",
  ],
  limits,
  material: (given) => given.material.key,
});
