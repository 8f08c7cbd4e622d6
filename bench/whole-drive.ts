import { isRefusal } from "../src/core/calculation.ts";
import * as m from "../src/mechanics/index.ts";

/** What is changed from one variant of the drive to the next. */
export interface Variant {
  /** The motor's place, mm. */
  readonly motor: m.Point;
  readonly motorTeeth: number;
  readonly lead: number;
  /** Mass of the stage, kg. */
  readonly mass: number;
}

const PITCH = 2;
const SCREWS = [
  { name: "left", x: -220, y: 60 },
  { name: "right", x: 220, y: 60 },
  { name: "back", x: 0, y: 330 },
] as const;
const SCREW_TEETH = 40;
const STOCK = Array.from({ length: 100 }, (_, index) => 800 + 10 * index);

const pitchRadius = (teeth: number) => (teeth * PITCH) / (2 * Math.PI);

function nodesOf({ motor, motorTeeth }: Variant): m.MeshedNode[] {
  const pulley = (name: string, { x, y }: m.Point, teeth: number): m.MeshedNode => ({
    ...{ name, x, y, teeth },
    radius: pitchRadius(teeth),
    inside: true,
  });
  const [left, right, back] = SCREWS;
  const idler = { name: "idler", x: motor.x + 60, y: motor.y + 40, radius: 9.376, inside: false };
  return [
    pulley("motor", motor, motorTeeth),
    idler,
    pulley("right", right, SCREW_TEETH),
    pulley("back", back, SCREW_TEETH),
    pulley("left", left, SCREW_TEETH),
  ];
}

/** Works one variant out from end to end; returns how many numbers came of it, so that nothing is left out as unused. */
export function wholeDrive(variant: Variant): number {
  const { lead, motorTeeth, mass } = variant;
  const nodes = nodesOf(variant);
  let numbers = 0;
  const count = <Outcome extends object>(outcome: Outcome): Outcome => {
    numbers += isRefusal(outcome) ? 0 : Object.values(outcome).length;
    return outcome;
  };
  const loop = m.beltLoop(nodes);
  if (isRefusal(loop)) return 0;
  const slide = { node: "motor", direction: 270, from: -10, to: 10 };
  const offers = count(m.stockLoops(nodes, slide, PITCH, STOCK));
  count(m.idlerDuties(nodes));
  for (const [index, wrap] of loop.wraps.entries()) {
    const teeth = nodes[index]?.teeth;
    if (teeth !== undefined) count(m.teethInMesh.compute({ teeth, wrap }));
    count(m.shaftPull.compute({ tension: 15, wrap }));
    count(m.pluckFrequency.compute({ tension: 15, mass: 0.0085, span: loop.spans[index]?.length ?? 0 }));
  }
  const first = isRefusal(offers) ? undefined : offers[0];
  if (first !== undefined && !isRefusal(first.position)) {
    const tolerance = m.loopTolerance.compute({ length: first.length });
    const given = { slack: 2, length: first.length, stretch: 0.2, frame: 1 };
    const { sensitivity } = first.position;
    if (!isRefusal(tolerance)) count(m.requiredSlide.compute({ ...given, ...tolerance, sensitivity }));
  }
  const balance = m.centreOfMass([
    { mass, x: 0, y: 150 },
    { mass: 1, x: 120, y: 100 },
  ]);
  if (isRefusal(balance)) return numbers;
  const loads = m.screwLoads(SCREWS, balance.weight, balance);
  if (isRefusal(loads)) return numbers;
  let [raise, lower] = [0, 0];
  for (const { load } of loads) {
    const torque = m.screwTorque.compute({ load, pitchDiameter: 7, lead, flank: 15, friction: 0.15 });
    if (isRefusal(torque)) continue;
    count(torque);
    raise += torque.raise;
    lower += torque.lower;
    numbers += typeof m.screwLocking(torque.critical, ...m.NUT_FRICTION["greased brass"]) === "string" ? 1 : 0;
    count(m.screwColumn.compute({ ends: 1, modulus: 205000, yield: 300, root: 5.5, length: 400 }));
    count(m.screwWhirl.compute({ ends: Math.PI, length: 400, root: 5.5, modulus: 205000, density: 7.85 }));
    count(m.bearingStaticLoad.compute({ radial: 30, axial: load, rating: 1370 }));
    count(m.setScrewHold.compute({ count: 2, each: 1713, share: 0.3, load }));
  }
  count(m.motorTorque.compute({ raise, lower, ratio: SCREW_TEETH / motorTeeth, belt: 0.95 }));
  count(m.driveResolution.compute({ screwTeeth: SCREW_TEETH, motorTeeth, lead, stepAngle: 1.8, microsteps: 16 }));
  count(
    m.screwsInStep(SCREWS.map(({ name }) => ({ name, lead, screwTeeth: 40, motorTeeth, hand: "right", inside: true }))),
  );
  count(m.beltSeat.compute({ plane: 24, pulley: 16, groove: 7, flange: 1, hub: 7, washers: 1, collar: 0, bearing: 7 }));
  const arm = { force: balance.weight / 2, at: 200, length: 200, modulus: 69000, inertia: 7000 };
  count(m.cantileverDeflection.compute(arm));
  count(m.growthVector.compute({ plate: 23.4, plateWarming: 80, frame: 23.4, frameWarming: 5, x: 300, y: 200 }));
  count(m.warmUp.compute({ mass, heat: 896, warming: 60, power: 300, loss: 2.7 }));
  return numbers;
}
