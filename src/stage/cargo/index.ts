import { isRefusal } from "../../core/calculation.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Fact, Topic } from "../fact.ts";
import { isTouched, mayMove, type Unread } from "../frame/unread.ts";
import type { LoadCases } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { casesOf, type LoadCase } from "./cases.ts";
import { crashForce } from "./crash.ts";
import { massesOf } from "./masses.ts";
import { screwDrives } from "./screw-drives.ts";
import { screwLayout } from "./screw-layout.ts";
import { type Share, type Shares, type Support, sharesOn } from "./supports.ts";
import { unevenLoads } from "./uneven-loads.ts";

/** A case with what each screw carries in it. */
export interface SharedCase extends LoadCase {
  readonly shares: Shares;
}

/** Keys of the plan that weights, and their shares on the screws, follow from. */
const WEIGHTS = ["screws", "bars", "plate", "print", "masses", "carriages", "carriage", "motor", "foot"] as const;

/**
 * Returns what the screws carry in every case; undefined loads where the screws cannot carry the stage, or where what
 * is to be carried could not be read.
 */
export function shareLoads(plan: Plan, unread: Unread = []): Topic & { readonly loads: LoadCases | undefined } {
  const { masses, facts } = massesOf(plan);
  const screws = screwsOf(plan);
  if (isTouched(unread, ...WEIGHTS)) {
    const blind = isTouched(unread, "plate", "carriages") || mayMove(unread);
    return { loads: undefined, sections: [], diagnostics: blind ? [] : screwLayout(plan, screws).diagnostics };
  }
  const cases = casesOf(plan, masses);
  const layout = screwLayout(plan, screws);
  const shared = cases.flatMap((each): SharedCase[] => {
    const shares = sharesOn(screws, each.weight, each.centre);
    return isRefusal(shares) ? [] : [{ ...each, shares }];
  });
  const crash = crashForce(plan, screwDrives(plan));
  const weights = { title: "Masses", facts: [...facts, ...centreFacts(cases[0])] };
  if (shared.length === 0) return { loads: undefined, sections: [weights], diagnostics: unshared(plan, layout) };
  const loads = loadsOf(screws, shared, crash.force);
  const section = {
    title: "Load on the screws",
    facts: [...screws.flatMap(({ name }) => screwFacts(name, shared)), ...crash.facts, ...layout.facts],
    lines: shared.map((each) => lineOf(each)),
  };
  return { loads, sections: [weights, section], diagnostics: [...layout.diagnostics, ...unevenLoads(plan, shared)] };
}

/** Returns the screws in plan, mm. */
export function screwsOf({ screws }: Plan): readonly Support[] {
  return Object.entries(screws).map(([name, { at }]) => ({ name, x: at[0], y: at[1] }));
}

function unshared(plan: Plan, { diagnostics }: { readonly diagnostics: readonly Diagnostic[] }): readonly Diagnostic[] {
  return Object.keys(plan.screws).length === 0 ? [] : diagnostics;
}

function centreFacts(empty: LoadCase | undefined): Fact[] {
  if (empty === undefined) return [];
  return [
    { key: "stage.weight", label: "weight of the empty stage", value: empty.weight, unit: "N" },
    { key: "stage.centre.x", label: "its centre of mass, x", value: empty.centre.x, unit: "mm" },
    { key: "stage.centre.y", label: "its centre of mass, y", value: empty.centre.y, unit: "mm" },
  ];
}

function loadsOf(screws: readonly Support[], shared: readonly SharedCase[], crash: number): LoadCases {
  const each = (shares: Shares, of: "most" | "least") =>
    Object.fromEntries(Object.entries(shares).map(([screw, share]) => [screw, share[of]]));
  const worst = screws.map(({ name }) => [name, Math.max(...shared.map(({ shares }) => shares[name]?.most ?? 0))]);
  return {
    weight: shared[0]?.weight ?? 0,
    cases: shared.map(({ name, weight, leaned, shares }) => ({
      name,
      weight,
      leaned,
      shares: each(shares, "most"),
      least: each(shares, "least"),
    })),
    worst: Object.fromEntries(worst),
    crash,
  };
}

/** The first case in which a number is the largest. */
function extreme(shared: readonly SharedCase[], of: (one: SharedCase) => number): SharedCase | undefined {
  const largest = Math.max(...shared.map(of));
  return shared.find((one) => of(one) === largest);
}

function screwFacts(name: string, shared: readonly SharedCase[]): Fact[] {
  const fact = (key: string, label: string, value: number, share: Share | undefined): Fact => {
    const plain: Fact = { key: `screw.${name}.${key}`, label: `screw ${name}: ${label}`, value, unit: "N" };
    return share?.from === undefined ? plain : { ...plain, from: share.from };
  };
  const heavy = extreme(shared, (one) => one.shares[name]?.most ?? 0);
  const light = extreme(shared, (one) => -(one.shares[name]?.least ?? 0));
  return [
    fact("share", "stage empty", shared[0]?.shares[name]?.most ?? 0, shared[0]?.shares[name]),
    fact("worst", `most, ${heavy?.name ?? ""}`, heavy?.shares[name]?.most ?? 0, heavy?.shares[name]),
    {
      ...fact("least", `least, ${light?.name ?? ""}`, light?.shares[name]?.least ?? 0, light?.shares[name]),
      limit: { value: 0, kind: "at least" },
    },
  ];
}

function lineOf({ name, weight, shares }: SharedCase): string {
  const each = Object.entries(shares).map(([screw, { most, least }]) => {
    const load = most === least ? most.toFixed(1) : `${least.toFixed(1)} to ${most.toFixed(1)}`;
    return `${screw} ${load}`;
  });
  return `${name}: ${each.join(", ")} of ${weight.toFixed(1)} N`;
}
