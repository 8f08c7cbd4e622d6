import { fumes } from "../cautions.ts";
import { defineFamily } from "../define-family.ts";
import { checks } from "./checks/index.ts";
import { derive } from "./derive/index.ts";
import { dimensions } from "./dimensions/index.ts";
import { givens } from "./givens.ts";
import { schema } from "./parameters.ts";
import { pieces } from "./pieces.ts";
import { hardware, limits } from "./shopping.ts";

export const screwFoot = defineFamily({
  name: "screw-foot",
  title: "Screw foot: bearing bracket at a stepped height",
  purpose:
    "Carries a lead screw's lower end in a ball bearing at the height that puts its pulley in the belt's plane, and takes thrust and belt pull into the bar.",
  orientation: "axis upright, seat up: pocket and shoulder print true and the thrust presses the layers together",
  sketch: `
          |screw|                        |screw|
        [   hub   ] <- set screws       [= flange =]
       [= flange ==]                     [ teeth ] <- belt plane z_belt
        [  teeth  ] <- belt plane       [= flange =]
       [= flange ==]                      [ hub ] <- set screws
          (ring)                          (ring)
     |[  bearing B  ]| rim z_r       |[  bearing B  ]|
     |__           __| seat s        |__           __|
        |  d_sh   |   t_floor           |         |
     |<-- a --> mating face y = -a; bed level z_0
`,
  schema,
  derive,
  dimensions,
  givens,
  checks,
  pieces,
  hardware,
  cautions: ({ given }) => [
    "not-lifting-gear",
    "stage-can-fall",
    ...(given.thrust === "pulley" ? (["set-screws-carry"] as const) : []),
    "nips",
    "crush",
    ...fumes(given.material.key),
    "own-responsibility",
  ],
  limits,
  material: (given) => given.material.key,
});
