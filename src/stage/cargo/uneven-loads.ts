import type { Diagnostic } from "../../core/diagnostic.ts";
import { GRAVITY } from "../../mechanics/centre-of-mass.ts";
import { above, below } from "../../parts/check.ts";
import type { Plan } from "../schema/index.ts";
import { told } from "../worked.ts";
import type { SharedCase } from "./index.ts";

/** Least share of the weight on a screw, and how unequal screws may be, before a warning. Source: design rule. */
const LEAST_SHARE = 0.1;
const MOST_RATIO = 3;

/** Returns which corner lifts off its nut, which is hardly loaded, and whether screws are loaded very unequally. */
export function unevenLoads(plan: Plan, shared: readonly SharedCase[]): Diagnostic[] {
  const screws = Object.keys(plan.screws);
  // Of four any may be idle: that is told once, of all of them, where they are counted.
  const evenness = screws.length > 3 ? [] : uneven(shared);
  return [...screws.flatMap((screw) => liftsOff(plan, shared, screw)), ...evenness];
}

function liftsOff(plan: Plan, shared: readonly SharedCase[], screw: string): Diagnostic[] {
  const load = ({ shares }: SharedCase) => shares[screw]?.least ?? 0;
  const least = (cases: readonly SharedCase[]) => cases.reduce((low, each) => (load(each) < load(low) ? each : low));
  const low = least(shared);
  const guided = Object.keys(plan.carriages).length > 0;
  const path = ["screws", screw, "at"];
  if (load(low) < -1e-9 * low.weight) {
    const where = `${low.name}: ${screw} would have to pull the stage down with ${(-load(low)).toFixed(1)} N`;
    return told("stage-corner-lifts-off", path, {
      level: guided ? "warning" : "error",
      says: guided ? `${where}; only the wheels hold it` : where,
      set: cure(plan, shared, screw, low),
      found: load(low),
      limit: 0,
      unit: "N",
    });
  }
  if (Object.keys(plan.screws).length > 3) return [];
  const own = least(shared.filter(({ leaned }) => !leaned));
  const finding = below({
    value: load(own),
    unit: "N",
    warning: LEAST_SHARE * own.weight,
    says: (limit) =>
      `${own.name}: ${screw} carries ${load(own).toFixed(1)} N, under ${limit.toFixed(1)} N: a tenth of all`,
    set: "at: further out, or the masses nearer to this screw",
  });
  return told("stage-corner-lifts-off", path, finding);
}

/** The heaviest print at that corner that still leaves the screw loaded, where there is one. */
function cure(plan: Plan, shared: readonly SharedCase[], screw: string, low: SharedCase): string {
  const further = "at: further out, so that the screws stand round the corners of the plate";
  const empty = shared[0]?.shares[screw]?.least ?? 0;
  const lost = empty - (low.shares[screw]?.least ?? 0);
  if (low.leaned || low === shared[0] || empty <= 0 || lost <= 0) return further;
  const most = Math.floor((1000 * plan.print * empty) / lost) / 1000;
  return `${further}; or print: ${most} kg at most (${(most * GRAVITY).toFixed(1)} N)`;
}

function uneven(shared: readonly SharedCase[]): Diagnostic[] {
  const ratios = shared
    .filter(({ leaned }) => !leaned)
    .map((each) => {
      const loads = Object.values(each.shares);
      const [most, least] = [Math.max(...loads.map((one) => one.most)), Math.min(...loads.map((one) => one.least))];
      return { each, ratio: least > 0 ? most / least : 0 };
    });
  const worst = ratios.reduce((one, other) => (other.ratio > one.ratio ? other : one));
  const finding = above({
    value: worst.ratio,
    unit: "",
    warning: MOST_RATIO,
    says: (limit) =>
      `${worst.each.name}: the most loaded screw carries ${worst.ratio.toFixed(1)} times the least loaded one, over ${limit}`,
    set: "screws that stand round the centre of mass, or the masses moved",
  });
  return told("screw-loads-uneven", ["screws"], finding);
}
