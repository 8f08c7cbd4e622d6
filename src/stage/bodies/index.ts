import { boundsOf } from "../../geometry/bounds.ts";
import type { PrinterOf, Stage } from "../machine.ts";
import { bars } from "./bars.ts";
import { belts } from "./belts.ts";
import type { Body, BodyKind, Drawn } from "./body.ts";
import { idlerAxles, idlers } from "./idlers.ts";
import { type Machine, machineOf } from "./machine-data.ts";
import { motorPulleys, motorScrews, motors } from "./motor.ts";
import { nuts } from "./nuts.ts";
import { fasteners, printedParts } from "./parts.ts";
import { heaters, plates } from "./plates.ts";
import { bearings, collars, rings, screwPulleys, screws } from "./screw-axis.ts";
import { springs, thumbWheels, tramBolts, tramWashers } from "./tram-stack.ts";
import { axles, eccentrics, wheels } from "./wheels.ts";

export type { Body, BodyKind, RoomName } from "./body.ts";

/** Where the bodies of one kind come from. A kind that is added later joins by one entry. */
interface Source {
  readonly kind: BodyKind;
  readonly from: (machine: Machine) => readonly Drawn[];
}

const SOURCES: readonly Source[] = [
  { kind: "bar", from: bars },
  { kind: "screw", from: screws },
  { kind: "bearing", from: bearings },
  { kind: "ring", from: rings },
  { kind: "collar", from: collars },
  { kind: "pulley", from: screwPulleys },
  { kind: "motor", from: motors },
  { kind: "motor-screw", from: motorScrews },
  { kind: "pulley", from: motorPulleys },
  { kind: "belt", from: belts },
  { kind: "idler", from: idlers },
  { kind: "plate", from: plates },
  { kind: "heater", from: heaters },
  { kind: "wheel", from: wheels },
  { kind: "axle", from: axles },
  { kind: "eccentric", from: eccentrics },
  { kind: "nut", from: nuts },
  { kind: "idler-axle", from: idlerAxles },
  { kind: "tram-bolt", from: tramBolts },
  { kind: "spring", from: springs },
  { kind: "washer", from: tramWashers },
  { kind: "thumb-wheel", from: thumbWheels },
  { kind: "fastener", from: fasteners },
  { kind: "part", from: printedParts },
];

/** Returns everything the assembled machine consists of, at the bottom of its travel. mm, in the machine's frame. */
export function bodiesOf(stage: Stage, printer: PrinterOf): Body[] {
  const machine = machineOf(stage, printer);
  return SOURCES.flatMap(({ kind, from }) =>
    from(machine).map((drawn): Body => ({ moves: false, rooms: {}, ...drawn, kind, box: boundsOf(drawn.solid) })),
  );
}
