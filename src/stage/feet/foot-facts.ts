import { isRefusal } from "../../core/calculation.ts";
import { beltSeat } from "../../mechanics/belt-seat.ts";
import { shaftPull } from "../../mechanics/shaft-pull.ts";
import { type Fact, factFrom, type Section } from "../fact.ts";
import type { FootChoice } from "../machine.ts";
import { type Choosing, footName } from "./foot-choice.ts";
import { lossOf, ranked, seatOf, type Tried } from "./tried.ts";

/** Returns the block of the report about one chosen foot. */
export function footSection({ input, tried }: Choosing, foot: FootChoice): Section {
  const best = tried.find(({ hub, rings }) => hub === foot.hub && rings.join() === foot.candidates[0]?.rings.join());
  const { screw, bar } = foot;
  const placed = (name: string, label: string, value: number): Fact => ({
    key: `${footName(screw)}.${name}`,
    label,
    value,
    unit: "mm",
  });
  const seat = placed("seat", `seat of ${screw} over the top of ${bar}, as printed`, foot.seat);
  const lowest = best?.derived.lowestSeat;
  return {
    title: `Foot of ${screw}`,
    facts: [
      ...(best === undefined ? [] : wantedSeat(screw, bar, best)),
      lowest === undefined ? seat : { ...seat, limit: { value: lowest, kind: "at least" } },
      placed("seat-over-datum", `seat of ${screw} over the datum`, foot.seatOverDatum),
      placed("shim", `shim under the bearing of ${screw}`, foot.shim),
      placed("plane-over-datum", `belt at ${screw} over the datum, as printed`, foot.plane),
      placed("residual", `belt at ${screw} over the plane of ${foot.loop}`, foot.residual),
      ...pullFact(screw, input.belt),
    ],
    lines: foot.candidates.map((one) => line(one, one.lost ?? "chosen")),
  };
}

/** Returns the block about a foot that no way of stacking makes fit. */
export function hopelessSection({ input, tried }: Choosing): Section {
  const lines = ranked(tried).map((one) => line({ ...one, seat: seatOf(one) }, lossOf(one, undefined)));
  return { title: `Foot of ${input.screw}`, facts: [], lines };
}

function line({ hub, rings, seat }: Pick<Tried, "hub" | "rings"> & { readonly seat: number }, fate: string): string {
  return `hub ${hub}, ${rings.length === 0 ? "no ring" : rings.join(" + ")}: seat ${seat.toFixed(2)} mm; ${fate}`;
}

/** The seat before it is put on a layer, by the calculation of the stack. */
function wantedSeat(screw: string, bar: string, { given, hub, washers, derived }: Tried): Fact[] {
  const { pulley, bearing, beltPlane } = given;
  const { height, toothWidth, flangeThickness, hubLength } = pulley.values;
  const named = { key: `${footName(screw)}.seat-wanted`, label: `seat of ${screw} over the top of ${bar}, wanted` };
  const inputs = {
    plane: beltPlane,
    pulley: height,
    groove: toothWidth,
    flange: flangeThickness,
    hub: hubLength,
    washers: washers.reduce((sum, thickness) => sum + thickness, 0),
    collar: derived.collarHeight,
    bearing: bearing.values.width,
  };
  const fact = factFrom(beltSeat, inputs, hub === "up" ? "seatUp" : "seatDown", named);
  return isRefusal(fact) ? [] : [fact];
}

function pullFact(screw: string, belt: Choosing["input"]["belt"]): Fact[] {
  if (belt === undefined) return [];
  const named = { key: `${footName(screw)}.pull`, label: `pull of the belt on ${screw}` };
  const fact = factFrom(shaftPull, { tension: belt.tension, wrap: belt.wrap }, "pull", named);
  return isRefusal(fact) ? [] : [fact];
}
