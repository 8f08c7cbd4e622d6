import { SHIM_RINGS } from "../catalogue/shim-rings.ts";
import { itemOf } from "../core/item.ts";
import { tidy } from "../core/rounding.ts";
import type { HardwareLine } from "../parts/family.ts";
import type { Parameters } from "../parts/screw-foot/parameters.ts";
import { shimLines } from "../parts/screw-foot/shim-lines.ts";
import type { FootChoice } from "../stage/index.ts";
import { canonical } from "./hash.ts";
import { type Designed, designPart } from "./make.ts";
import { ringWords } from "./ring-words.ts";
import type { StagePart } from "./stage-parts.ts";

/** What to do with a foot that is there: `shim` is the height of the rings that are to lie under its bearing, mm. */
export interface Reuse {
  readonly action: "keep" | "restack" | "flip" | "shim";
  readonly shim?: number;
  readonly why: string;
  readonly hardware: readonly HardwareLine[];
}

/** The highest shim that is worth it, mm; the share of its width that must still hold a bearing. Design rules. */
const HIGHEST_SHIM = 3;
const HELD = 0.6;
/** The thinnest shim ring that shops keep, mm. */
const THINNEST = 0.1;

/**
 * Returns how the old print can carry the pulley at its new height: rings out or in, the hub turned over, or rings
 * under the bearing; undefined where nothing does that passes the checks of the part as the old and the new one do.
 */
export function reusedFoot(
  [was, part]: readonly [StagePart, StagePart],
  [old, { candidates }]: readonly [FootChoice, FootChoice],
): Reuse | undefined {
  const near = was.request.printer.layer / 2 + 1e-9;
  const most = Math.min(HIGHEST_SHIM, pocketOf(was) - HELD * widthOf(was)) + 1e-9;
  const ways = candidates.map((candidate) => wayOf(candidate, old)).sort((a, b) => a.effort - b.effort);
  const level = ways.filter(({ lift }) => Math.abs(lift - old.shim) <= near || Math.abs(lift) <= near);
  const raised = ways
    .filter(({ flips, lift }) => !flips && lift > 0 && lift <= most)
    .sort((a, b) => a.lift - b.lift || a.effort - b.effort);
  for (const way of [...level, ...raised]) {
    const shim = shimOf(way.lift, old.shim, near);
    const designed = standing(part, way, tidy(way.lift));
    if (designed !== undefined && !findsMore(designed, [was.designed, part.designed]))
      return { ...toldOf(way, shim, old), hardware: boughtOf(designed, part, shim) };
  }
  return undefined;
}

type Candidate = FootChoice["candidates"][number];

interface Way {
  readonly candidate: Candidate;
  /** How far the bearing must lie over the seat as printed, mm. */
  readonly lift: number;
  readonly flips: boolean;
  readonly rings: string;
  readonly effort: number;
}

function wayOf(candidate: Candidate, old: FootChoice): Way {
  const flips = candidate.hub !== old.hub;
  const rings = ringWords(old.candidates[0]?.rings ?? [], candidate.rings);
  const lift = candidate.seat - old.seat;
  return { candidate, lift, flips, rings, effort: (flips ? 2 : 0) + (rings === "" ? 0 : 1) };
}

/** What lies under the bearing stays where that will do; else nothing, or rings to a tenth. */
function shimOf(lift: number, there: number, near: number): number {
  if (Math.abs(lift - there) <= near) return there;
  return Math.abs(lift) <= near ? 0 : tidy(Math.round(lift / THINNEST) * THINNEST);
}

function toldOf({ candidate, lift, flips, rings }: Way, shim: number, old: FootChoice): Omit<Reuse, "hardware"> {
  const under = old.shim === 0 ? "" : `what lies under the bearing, ${old.shim} mm, comes out`;
  const off = `the belt is ${Math.abs(lift - shim).toFixed(2)} mm off its plane`;
  const hub = flips ? `hub ${candidate.hub} instead of ${old.hub}` : "";
  const told = (...words: readonly string[]) => words.filter((word) => word !== "").join("; ");
  if (shim !== old.shim && shim > 0) {
    const why = told(`${shim} mm of rings under the bearing, hub ${candidate.hub} as before`, under, rings, off);
    return { action: "shim", shim, why };
  }
  const gone = shim === old.shim ? "" : under;
  if (flips) return { action: "flip", why: told(hub, rings, gone, off) };
  return { action: rings === "" && gone === "" ? "keep" : "restack", why: told(rings, gone, off) };
}

/** The foot as it would stand: the new one's parameters with this stack, its plane brought to where the seat is. */
function standing({ request }: StagePart, { candidate }: Way, lift: number): Designed | undefined {
  const { beltPlane } = request.parameters as unknown as Parameters;
  const washers = ringsOf(request.parameters as unknown as Parameters, candidate);
  if (washers === undefined) return undefined;
  const stack = { hub: candidate.hub, washers, beltPlane: tidy(beltPlane - lift) };
  return designPart({ ...request, parameters: { ...request.parameters, ...stack } });
}

/** The rings of a way as the part's parameters hold them; the tries of a stage have no others than listed ones. */
function ringsOf({ washers }: Parameters, { rings }: Candidate): Parameters["washers"] {
  if (washers !== undefined && canonical(washers.map(({ key }) => key)) === canonical(rings)) return washers;
  const items = rings.flatMap((name) => {
    const listed = SHIM_RINGS.rows.find(({ key }) => key === name);
    return listed === undefined ? unlisted(name) : [itemOf(listed)];
  });
  return items.length === rings.length ? items : undefined;
}

function unlisted(key: string): NonNullable<Parameters["washers"]> {
  const [hole, outside, thickness] = key.split(" x ").map(Number);
  if (hole === undefined || outside === undefined || !(Number(thickness) > 0)) return [];
  const values = { hole, outside, thickness: Number(thickness) };
  return [{ key, values, row: undefined, measured: [], stated: Object.keys(values) }];
}

/** Whether a check finds an error or warning that neither the old foot nor the new one has. */
function findsMore({ diagnostics }: Designed, known: readonly Designed[]): boolean {
  const grave = (all: Designed["diagnostics"]) => all.filter(({ level }) => level !== "note");
  const names = new Set(known.flatMap((one) => grave(one.diagnostics).map(({ name }) => name)));
  return grave(diagnostics).some(({ name }) => !names.has(name));
}

/** What the foot needs: with the rings under its bearing, which its parameters do not hold. */
function boughtOf({ design }: Designed, { request }: StagePart, shim: number): HardwareLine[] {
  const { bearing } = request.parameters as unknown as Parameters;
  const others = design.hardware.filter(({ item }) => !item.endsWith("under the bearing"));
  return [...others, ...shimLines(bearing.values, shim)];
}

const pocketOf = ({ designed }: StagePart) =>
  designed.design.dimensions.find(({ key }) => key === "pocketDepth")?.value ?? 0;

function widthOf({ request }: StagePart): number {
  const { bearing } = request.parameters as { bearing?: { values: { width: number } } };
  return bearing?.values.width ?? Number.POSITIVE_INFINITY;
}
