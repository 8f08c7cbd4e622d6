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
    "Carries V-grooved wheels that run on a bar's edges, one side fixed, the other on eccentrics, and a pattern to bolt stage arms to.",
  orientation: "outer face on the bed, axle holes upright, counterbores open upwards",
  sketch: `
          |<---- C ---->|
        fixed        eccentric        side:   [head] washer
     +--(+)-----------(O)--+  ---          ===========  plate t
     |   :    bar      :   |   |            ||  spacer / hexagon u_e
     |  ()    arm     ()   |   h            ||  shim
     |   :             :   |   |           [==] wheel, mid-plane z_w
     +--(+)-----------(O)--+  ---           ||  shim, washer, lock nut
        x_a: arm slots ()                   a_z along the axles, a_x across
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
    ...fumes(given.material.key),
    "own-responsibility",
  ],
  limits,
  material: (given) => given.material.key,
});
