import type * as z from "zod";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { complaintsOf, unresolved } from "../../parts/complaints.ts";
import { screwFoot } from "../../parts/screw-foot/index.ts";
import { typedAt } from "../frame/footing.ts";
import type { Plan } from "../schema/index.ts";
import type { FootInput } from "./foot-input.ts";

type Values = Readonly<Record<string, unknown>>;

/** Parameters of a foot that only the plan can know, and where the plan says them. */
const FOLLOWS: Readonly<Record<string, string>> = {
  screw: "screw: of the screw",
  bar: "bars, and bar: of the screw",
  belt: "belt: of the loop",
  beltWidth: "width: of the loop",
  beltPlane: "motor.plateTop and motor.pulleys",
  beltSpans: "nodes: of the loop",
  beltPull: "tension: of the loop",
  axialLoad: "plate, masses and print",
  lightestLoad: "plate, masses and print",
  steadyLoad: "plate, masses and print",
  otherSink: "plate, masses and print",
  crashForce: "motor.torque",
  framePosts: "bars",
  stageLowest: "travel.lowest",
  bearingToNut: "travel.nut",
  boltLengths: "stock.bolts",
};

/** What may be stated if it says what the places in the plan say: how far they may differ, mm or deg. */
const AGREES: Readonly<Record<string, number>> = {
  axisOffset: 0.05,
  axisOffsetB: 0.05,
  offset: 0.05,
  cornerAngle: 0.05,
};

const WHY = "the plan and the part would say two things of one machine";

/** Returns a complaint about each parameter that was typed and that only the plan can know. */
export function byHand(plan: Plan, typed: Values, { screw, derived, footing }: FootInput): Diagnostic[] {
  return Object.keys(typed).flatMap((name): Diagnostic[] => {
    const path = typedAt(plan, screw, name) ?? ["foot", name];
    const from = FOLLOWS[name];
    if (from !== undefined) {
      return [
        { ...unresolved(path, `${name} follows from the plan`, `nothing here; it follows from ${from}`), why: WHY },
      ];
    }
    const [within, own] = [AGREES[name], derived[name]];
    if (within === undefined || typeof own !== "number") return [];
    const value = numberOf(name, typed[name]);
    if (value === undefined || Math.abs(value - own) <= within) return [];
    const says = `${name} is ${value}, and ${screw} stands beside ${footing.bar.name} so that it is ${own}`;
    const unit = name === "cornerAngle" ? "deg" : "mm";
    const amounts = { found: { value, unit }, limit: { value: own, unit } } as const;
    return [{ ...unresolved(path, says, `${name}: ${own}, or another at: of ${screw}`), why: WHY, ...amounts }];
  });
}

function numberOf(name: string, typed: unknown): number | undefined {
  const field = screwFoot.schema.shape[name] as z.ZodType | undefined;
  const parsed = field?.safeParse(typed);
  return parsed?.success && typeof parsed.data === "number" ? parsed.data : undefined;
}

/** Returns what the foot's schema complains of, each at the place in the plan where the value comes from. */
export function complaintsAt(plan: Plan, error: z.ZodError, data: Values, input: FootInput): Diagnostic[] {
  return complaintsOf(error, { schema: screwFoot.schema, data, under: [] }).map((complaint) => {
    const [name, ...rest] = complaint.path;
    if (name === undefined) return { ...complaint, path: ["screws", input.screw] };
    const source = input.sources[String(name)];
    if (source !== undefined) return { ...complaint, path: source };
    const path = typedAt(plan, input.screw, String(name)) ?? ["screws", input.screw, "foot"];
    return { ...complaint, path: [...path, ...rest] };
  });
}
