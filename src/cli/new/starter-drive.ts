import type { Answers } from "./answers.ts";
import { type Attempt, type Frame, type Spot, screwSpots } from "./starter-plan.ts";

/** Motor, loops and idlers of a starter, as a plan holds them; lengths in mm. */
export interface Drive {
  readonly motor: Readonly<Record<string, unknown>>;
  readonly pulleys: readonly object[];
  readonly loops: Readonly<Record<string, object>>;
  readonly idlers: Readonly<Record<string, object>>;
}

const PULLEY = "20 teeth 2 mm";

/**
 * Idlers beside the motor, mm along the belt and inwards: the heads of the motor's screws stand 15.5 to both sides of
 * its shaft and slide with it; the flanges of an idler, 9 round its axle, stay clear of them, its axle of the motor.
 */
const ASIDE = 28;
const INWARDS = 18;
/** Air under the pulley: the belt then runs over the heads of the motor's screws. */
const OVER_HEADS = "2.5 mm";

/** Returns the drive: one loop round all screws, or a low one round those in front and a high one to the one behind. */
export function driveOf(frame: Frame, answers: Answers, attempt: Attempt): Drive {
  return answers.loops === 2 ? twoLoops(frame, attempt) : oneLoop(frame, answers, attempt);
}

/** The motor stands outside one side of the belt; two idlers on the belt's back lay it round the motor's pulley. */
function oneLoop(frame: Frame, { screws }: Answers, { along, out, inset }: Attempt): Drive {
  const spots = Object.entries(screwSpots(frame, screws, inset));
  const at = spots.map(([, spot]) => spot.at);
  // With two screws the belt's near side is in front, with more the last side is that on the left.
  const [from, to] = (screws === 2 ? [at[0], at[1]] : [at.at(-1), at[0]]) as [Spot, Spot];
  const span = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const way: Spot = [(to[0] - from[0]) / span, (to[1] - from[1]) / span];
  const outward: Spot = [way[1], -way[0]];
  const place = (s: number, t: number): Spot => [
    frame.snap(from[0] + way[0] * s + outward[0] * t),
    frame.snap(from[1] + way[1] * s + outward[1] * t),
  ];
  const s = span * along;
  const idler = (shift: number) => ({ at: place(s + shift, out - INWARDS), idler: "two F625", side: "outside" });
  const direction = Math.round((Math.atan2(outward[1], outward[0]) * 180) / Math.PI);
  return {
    motor: { motor: "NEMA 17", at: place(s, out) },
    pulleys: [{ loop: "belt", pulley: PULLEY, hub: "up", gap: OVER_HEADS }],
    loops: { belt: { nodes: ["motor", ...spots.map(([name]) => name), "one", "two"], slide: { direction } } },
    idlers: { one: idler(-ASIDE), two: idler(ASIDE) },
  };
}

/** The motor slides to tighten the high loop; an idler in the middle of the low one's back tightens that. */
function twoLoops(frame: Frame, { out, inset }: Attempt): Drive {
  const { snap, width } = frame;
  const spots = screwSpots(frame, 3, inset);
  const behind = spots.C?.at ?? [width / 2, 0];
  const at: Spot = [snap(behind[0]), snap(behind[1] - 50 - out)];
  const press: Spot = [snap(at[0] + 15), snap(at[1] - 50)];
  return {
    motor: { motor: { row: "NEMA 17", shaftLength: "42 mm" }, at },
    pulleys: [
      { loop: "low", pulley: PULLEY, hub: "down" },
      { loop: "high", pulley: PULLEY, hub: "up" },
    ],
    loops: {
      low: {
        nodes: ["motor", "A", "B", "press"],
        slide: { node: "press", direction: 0, from: -snap(15), to: snap(15) },
      },
      high: { nodes: ["motor", "C"], slide: { direction: 90 } },
    },
    idlers: { press: { at: press, idler: "two F625", side: "outside" } },
  };
}
