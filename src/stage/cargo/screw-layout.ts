import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Vec2 } from "../../geometry/mesh.ts";
import { distance } from "../../mechanics/point.ts";
import { triangleHeight } from "../../mechanics/triangle-height.ts";
import { above, below } from "../../parts/check.ts";
import type { Fact } from "../fact.ts";
import { footingOf, isMisfit } from "../frame/footing.ts";
import type { Plan } from "../schema/index.ts";
import { told, worked } from "../worked.ts";
import type { Support } from "./supports.ts";

/** Least height of the triangle of three screws: a share of its longest side, and of the plate's shorter side. */
const HEIGHT = { ofSide: 0.05, ofPlate: 0.4 };

interface Layout {
  readonly facts: readonly Fact[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Returns what is wrong with how many screws there are and where they stand to each other. */
export function screwLayout(plan: Plan, screws: readonly Support[]): Layout {
  if (screws.length === 3) return triangleOf(plan, screws);
  if (screws.length > 3) return { facts: [], diagnostics: fourScrews(screws.length) };
  const guided = Object.keys(plan.carriages).length > 0;
  const many = screws.length === 1 ? "one screw carries" : `${screws.length} screws carry`;
  const tips = told("stage-tips-over-its-screws", ["carriages"], {
    level: "error",
    says: `${many} the stage, and there is no carriage on wheels that keeps it level`,
    set: "carriages: one on a post, or a third screw beside the line of the others",
  });
  const apart = screws[1] === undefined || screws[0] === undefined ? 1 : distance(screws[0], screws[1]);
  return { facts: [], diagnostics: [...(guided ? [] : tips), ...onePlace(screws, apart)] };
}

function onePlace(screws: readonly Support[], apart: number): Diagnostic[] {
  if (apart > 0) return [];
  const names = screws.map(({ name }) => name).join(" and ");
  const set = "at: where each stands";
  const path = ["screws", screws[1]?.name ?? "", "at"];
  return told("screws-nearly-in-line", path, { level: "error", says: `${names} stand in one place`, set });
}

function fourScrews(count: number): Diagnostic[] {
  return told("four-screws-share-by-twist", ["screws"], {
    level: "warning",
    says: `${count} screws carry the stage: a twist of hundredths of a millimetre leaves one of them idle; loads are bounds`,
    set: "three screws: leave one of them out",
  });
}

function triangleOf(plan: Plan, screws: readonly Support[]): Layout {
  const [a, b, c] = screws as readonly [Support, Support, Support];
  const sides = { a: distance(b, c), b: distance(c, a), c: distance(a, b) };
  const wide = HEIGHT.ofPlate * Math.min(...plan.plate.size);
  const triangle = worked(triangleHeight, sides, {
    height: ["screws.height", "smallest height of the triangle of screws", { value: wide, kind: "at least" }],
    longest: ["screws.longest", "its longest side"],
  });
  const { height, longest } = triangle.values ?? { height: 0, longest: Math.max(sides.a, sides.b, sides.c) };
  const flat = HEIGHT.ofSide * longest;
  const middle = sides.a === longest ? a : sides.b === longest ? b : c;
  const says = (limit: number) =>
    `the three screws stand ${height.toFixed(1)} mm from one line, under ${limit.toFixed(1)} mm`;
  const set = (least: number) => `at: ${besideLine(plan, middle, screws, Math.ceil(least))}`;
  const path = ["screws", middle.name, "at"];
  const error =
    longest > 0
      ? below({ value: height, unit: "mm", error: flat, says, set: set(wide) })
      : above({ value: 1, unit: "mm", error: 0, says: () => "the three screws stand in one place", set: set(wide) });
  const warning = below({ value: height, unit: "mm", warning: wide, says, set: set(wide) });
  return { facts: triangle.facts, diagnostics: told("screws-nearly-in-line", path, error ?? warning) };
}

/** The place that far beside the line through the other two: on the screw's own side, else on the plate's. */
function besideLine(plan: Plan, own: Support, screws: readonly Support[], away: number): string {
  const [one, other] = screws.filter(({ name }) => name !== own.name) as [Support, Support];
  const long = distance(one, other);
  if (!(long > 0)) return `${away} mm or more beside the line through the other two`;
  const across = { x: (one.y - other.y) / long, y: (other.x - one.x) / long };
  const off = ({ x, y }: { x: number; y: number }) => (x - one.x) * across.x + (y - one.y) * across.y;
  const side = Math.abs(off(own)) > 1e-6 ? off(own) : off({ x: plan.plate.at[0], y: plan.plate.at[1] });
  const step = (side < 0 ? -away : away) - off(own);
  const place: Vec2 = [rounded(own.x + step * across.x), rounded(own.y + step * across.y)];
  const { at, bar } = onABar(plan, own.name, place, ([x, y]) => Math.abs(off({ x, y })) >= away);
  const far = at === place ? `${away} mm beside the line through the other two, or farther` : "beside that line";
  return `[${at.join(", ")}]${bar === undefined ? "" : ` and bar: ${bar}`}, ${far}`;
}

const rounded = (value: number) => Math.round(value * 10) / 10 + 0;

/** The place itself where a foot has a bar there, its own or another one; else the nearest far enough on a bar. */
function onABar(plan: Plan, name: string, place: Vec2, isFar: (at: Vec2) => boolean) {
  const screw = plan.screws[name];
  if (screw === undefined) return { at: place };
  const footing = (at: Vec2, bar: string | undefined) =>
    footingOf({ ...plan, screws: { ...plan.screws, [name]: { ...screw, at: [...at], bar } } }, name);
  if (!isMisfit(footing(place, screw.bar))) return { at: place };
  const other = footing(place, undefined);
  if (!isMisfit(other)) return { at: place, bar: other.bar.name };
  const beside = Object.keys(plan.bars).flatMap((bar) => {
    const misfit = footing(place, bar);
    if (plan.bars[bar]?.moves || !isMisfit(misfit) || misfit.at === undefined || !isFar(misfit.at)) return [];
    return isMisfit(footing(misfit.at, bar)) ? [] : [{ at: misfit.at, bar, by: misfit.by }];
  });
  const [nearest] = beside.sort((one, another) => one.by - another.by);
  return nearest ?? { at: place };
}
