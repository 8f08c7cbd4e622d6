import { hasErrors, type Path } from "../core/diagnostic.ts";
import { FAMILIES } from "../parts/index.ts";
import type { Printer } from "../printing/printer.ts";
import { acceptedOf } from "../stage/acceptance.ts";
import type { PlacedPart, Plan, Stage } from "../stage/index.ts";
import type { AssemblyFault } from "./clash/index.ts";
import { shortHash } from "./hash.ts";
import { type Designed, designPart } from "./make.ts";
import { companionRequests } from "./order.ts";
import { hashOf } from "./preset-text.ts";
import type { Request } from "./request.ts";

/** The printer that prints the parts of one family, and whether its settings were measured. */
export interface Printing {
  readonly printer: Printer;
  readonly calibrated: boolean;
}

/** A part of a machine, worked out; what a part needs of other families follows it as parts of their own. */
export interface StagePart {
  readonly owner: PlacedPart;
  readonly companion: boolean;
  readonly request: Request;
  readonly designed: Designed;
  readonly hash: string;
  /** Stands for all that its files follow from. */
  readonly key: string;
}

/** Returns every part of the machine, companions behind their owners. */
export function stageParts(stage: Stage, printing: (family: string) => Printing, version: string): StagePart[] {
  return stage.parts.flatMap((owner) => {
    const request = requestOf(owner, stage.plan, printing(owner.family));
    const main = partOf(owner, request, version, false);
    const others = companionRequests(request, main.designed.design);
    return [main, ...others.map((one) => partOf(owner, one, version, true))];
  });
}

function partOf(owner: PlacedPart, request: Request, version: string, companion: boolean): StagePart {
  const designed = designPart(request);
  const hash = hashOf(request);
  const { name, accept, calibrated } = request;
  const key = shortHash({ version, hash, name, accept, calibrated });
  return { owner, companion, request, designed, hash, key };
}

function requestOf({ name, family, parameters }: PlacedPart, plan: Plan, { printer, calibrated }: Printing) {
  const own = FAMILIES.find((one) => one.name === family);
  if (own === undefined) throw new Error(`a stage asks for a ${family}, which does not exist`);
  return { name, family: own, parameters, printer, calibrated, accept: acceptedOf(plan, name) };
}

/**
 * Returns whether an error of the machine forbids a part: one about the part's own place, or about no part's. What is
 * found between the bodies of the assembled machine forbids the printed parts among them, and nothing else.
 */
export function forbidden(
  { parts, diagnostics }: Stage,
  assembly: readonly Pick<AssemblyFault, "stops">[] = [],
): (part: PlacedPart) => boolean {
  const errors = diagnostics.filter(({ level }) => level === "error");
  const own = (path: Path, part: PlacedPart) => part.path.every((step, index) => path[index] === step);
  const general = errors.filter(({ path }) => !parts.some((part) => own(path, part)));
  return (part) =>
    hasErrors(general) ||
    errors.some(({ path }) => own(path, part)) ||
    assembly.some(({ stops }) => stops.includes(part.name));
}
