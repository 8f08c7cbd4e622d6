import { fumes } from "../cautions.ts";
import { defineFamily } from "../define-family.ts";
import { checks } from "./checks/index.ts";
import { derive } from "./derive.ts";
import { dimensions } from "./dimensions/index.ts";
import { givens } from "./givens.ts";
import { schema } from "./parameters.ts";
import { pieces } from "./pieces.ts";
import { companions, hardware, limits } from "./shopping.ts";

/** A plate that is no warmer may be as warm as its room, unheated, °C. Source: common practice. */
const WARM_ROOM = 30;

export const tramMount = defineFamily({
  name: "tram-mount",
  title: "Spring tram mount",
  purpose:
    "Holds a hot plate at one point on a spring round a bolt, so that the plate can be levelled and can grow as it warms.",
  orientation: "underside on the bed, cup up: the bolt's pull presses the layers together and nothing overhangs",
  sketch: `
       \\\\_//____ plate, t_pl ____       type seen from above:
          ||   washer   t_hw          fixed ( )   slot (====)   free (   )
        ( || )                 z_p    the slot points to the fixed mount
        ( || )  spring L_set
      | ( || ) |  cup, c_i wide, d_c deep      .-- bar, slot at z_row
     _|___||___|_________________________  __  |
    |     ||  bridge plate               |  t [+]
    |_____||_____________________________| __ [ ]
       ===||===  slider washer OD_w        |<-- a -->| bolt to bar
       [  ||  ]  thumb wheel, captive nut, insert or head
          ||  u_low
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
    "springs",
    // What heats a plate a little burns wires and skin as well, when its switch sticks.
    ...(given.plateTemperature > Math.max(WARM_ROOM, given.ambient) ? (["hot-surface", "heater-supply"] as const) : []),
    ...(given.plateTemperature > 50 ? (["softens"] as const) : []),
    ...fumes(given.material.key),
    "own-responsibility",
  ],
  limits,
  material: (given) => given.material.key,
});
