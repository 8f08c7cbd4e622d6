import type { Diagnostic } from "../../core/diagnostic.ts";
import { screwFoot } from "../../parts/screw-foot/index.ts";
import type { Printer } from "../../printing/printer.ts";
import { acceptedOf } from "../acceptance.ts";
import { type Footing, footParameters, rounded } from "../frame/footing.ts";
import type { Candidate, FootChoice, LoadCases, LoopChoice, MotorPulley, PlacedPart } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { byHand, complaintsAt } from "./by-hand.ts";
import { type FootInput, footInput } from "./foot-input.ts";
import { lossOf, ranked, seatOf, type Tried, tryAll, type Ways } from "./tried.ts";

/** A foot on its way to be chosen: what is known of it, and every way to stack it. */
export interface Choosing extends Ways {
  readonly input: FootInput;
  readonly diagnostics: readonly Diagnostic[];
}

interface Known {
  readonly plan: Plan;
  readonly pulley: MotorPulley;
  readonly loops: readonly LoopChoice[];
  readonly loads: LoadCases | undefined;
  readonly printer: Printer;
}

/** Returns every way to stack the foot of a screw, in no order, with what is wrong with what was typed. */
export function waysOf(screw: string, footing: Footing, { plan, pulley, loops, loads, printer }: Known): Choosing {
  const typed = footParameters(plan, screw);
  const input = footInput({ plan, screw, footing, typed, pulley, loops, loads });
  const strange = byHand(plan, typed, input);
  const accepted = acceptedOf(plan, footName(screw)).map(({ check }) => check);
  const outcome = tryAll({ typed: { ...typed, ...input.derived }, printer, accepted });
  if ("tried" in outcome) return { input, ...outcome, diagnostics: strange };
  const complaints = complaintsAt(plan, outcome.error, outcome.data, input);
  return { input, tried: [], untried: [], diagnostics: [...strange, ...complaints] };
}

/** Returns the chosen foot of a screw, placed; undefined when no way of stacking it fits. */
export function chosenFoot(
  plan: Plan,
  { input, tried, untried }: Choosing,
  prefer: "up" | "down",
): FootChoice | undefined {
  const [best, ...others] = ranked(tried, prefer);
  if (best === undefined || best.errors.length > 0) return undefined;
  const { footing, screw, loop } = input;
  const { seat, shim, plane, sink, thrust } = best.derived;
  return {
    screw,
    loop,
    bar: footing.bar.name,
    hub: best.hub,
    seat,
    seatOverDatum: rounded(footing.origin[2] + seat),
    shim,
    give: thrust > 0 ? sink / thrust : 0,
    plane: rounded(footing.origin[2] + plane),
    residual: rounded(footing.origin[2] + plane - input.plane),
    candidates: [candidateOf(best, undefined), ...others.map((one) => candidateOf(one, lossOf(one, best))), ...untried],
    part: partOf(plan, input, best),
  };
}

function candidateOf(one: Tried, lost: string | undefined): Candidate {
  return { hub: one.hub, washers: one.washers, rings: one.rings, seat: seatOf(one), lost };
}

/** The part's name in the machine: it names files, whose capitals some file systems do not tell apart. */
/** Returns the name of the part that is the foot of a screw, by which its numbers go as well. */
export const footName = (screw: string) => `foot-${screw.toLowerCase()}`;

/** The part as its schema reads it, where its own frame comes to stand. */
function partOf(plan: Plan, input: FootInput, best: Tried): PlacedPart {
  const { screw, footing, derived } = input;
  const nut = nutOver(plan, input, best);
  const fits = nut !== undefined && screwFoot.schema.shape.bearingToNut?.safeParse(nut).success;
  const asked = footParameters(plan, screw);
  const hub = best.hub === asked.hub ? [] : ["hub"];
  const rings = best.given.washers === undefined || asked.washers !== undefined ? [] : ["washers"];
  return {
    name: footName(screw),
    family: screwFoot.name,
    parameters: fits ? { ...best.given, bearingToNut: nut } : best.given,
    derived: [...Object.keys(derived), ...hub, ...rings, ...(fits ? ["bearingToNut"] : [])],
    path: ["screws", screw],
    placement: { origin: footing.origin, angle: footing.angle },
    moves: false,
  };
}

/** Bearing to nut with the stage at the bottom, mm; undefined on a bridge, whose second bearing makes it no matter. */
export function nutOver({ travel }: Plan, { footing }: FootInput, { given, derived }: Tried): number | undefined {
  if (given.style === "bridged") return undefined;
  return rounded(travel.nut - footing.origin[2] - derived.seat - derived.shim - given.bearing.values.width / 2);
}
