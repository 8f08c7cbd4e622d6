import { type Compared, compareParts, type Verdict } from "../../build/compare.ts";
import { drawPart, makeDraft } from "../../build/make.ts";
import { type NotCompared, notCompared, type Wrong } from "../../build/not-compared.ts";
import { finishedPieces } from "../../build/order.ts";
import { printHours } from "../../build/print-hours.ts";
import type { Kernel } from "../../geometry/kernel.ts";
import { boughtFor } from "../../outputs/hardware-csv.ts";
import { breath } from "../breath.ts";
import { grid } from "../explain/grid.ts";
import { hanging } from "../explain/hanging.ts";
import { EXIT, type Io } from "../io.ts";
import type { Machine } from "../load-stage.ts";

interface Row extends Verdict {
  /** Hours to print it, estimated; 0 for what stays. */
  readonly hours: number;
}

interface CompareArgs {
  readonly json: boolean;
  readonly quiet: boolean;
  /** Which of the two plans have errors, told already. */
  readonly wrong: Wrong;
}

/** Tells what to keep, restack, shim, flip or print again when one machine becomes the other. Returns the exit code. */
export async function compare(
  before: Machine,
  after: Machine,
  { json, quiet, wrong }: CompareArgs,
  kernel: Promise<Kernel>,
  io: Io,
): Promise<number> {
  const rows: Row[] = [];
  const unknown = notCompared(before, after, wrong);
  for (const verdict of compareParts(before, after)) {
    if (unknown.parts.includes(verdict.name)) continue;
    io.progress?.(`comparing ${verdict.name}`);
    rows.push({ ...verdict, hours: await hoursOf(verdict, kernel) });
    await breath();
  }
  const buy = unknown.purchases ? purchases(before, after, rows) : undefined;
  const left = buy === undefined ? { buy: null, notCompared: unknown.parts } : { buy };
  if (json) io.out(JSON.stringify({ parts: rows.map(asData), ...left }, undefined, 2));
  else for (const line of [...lines(rows, buy ?? [], quiet), ...uncertain(unknown)]) io.out(line);
  return wrong.before || wrong.after ? EXIT.errors : EXIT.done;
}

/** Says what is not told because of errors. */
function uncertain({ parts, purchases: certain }: NotCompared): string[] {
  if (certain) return [];
  const whole = "the two cannot be compared part by part until the errors are mended";
  const named = parts.length === 0 ? "" : `; not compared: ${parts.join(", ")}`;
  return hanging("", `${whole}${named}; what to buy is not told`);
}

async function hoursOf({ action, after }: Verdict, kernel: Promise<Kernel>): Promise<number> {
  if (after === undefined || (action !== "reprint" && action !== "print")) return 0;
  const pieces = finishedPieces(makeDraft(drawPart(after.request, after.designed), await kernel));
  const bodies = pieces.map(({ made: { piece }, figures }) => ({
    count: piece.count,
    mass: figures.mass,
  }));
  return printHours(bodies, after.designed.design.material, after.request.printer);
}

/** Returns what the new machine needs more of than the old one holds, and what is over. */
function purchases(
  before: Compared,
  after: Compared,
  rows: readonly Verdict[],
): { readonly item: string; readonly more: number }[] {
  const counted = ({ stage, parts }: Compared, stacks: ReadonlyMap<string, Verdict["hardware"]>) => {
    const designs = parts.map(({ request: { name }, designed }) => {
      const hardware = stacks.get(name) ?? designed.design.hardware;
      return { name, design: { hardware } };
    });
    return new Map(
      boughtFor(stage, designs).map(({ item, length, needed }) => [
        length === undefined ? item : `${item}, ${Number(length.toFixed(2))} mm`,
        needed,
      ]),
    );
  };
  const stacks = new Map(rows.map(({ name, hardware }) => [name, hardware]));
  const [old, now] = [counted(before, new Map()), counted(after, stacks)];
  return [...new Set([...old.keys(), ...now.keys()])]
    .map((item) => ({ item, more: (now.get(item) ?? 0) - (old.get(item) ?? 0) }))
    .filter(({ more }) => more !== 0);
}

const wordsFor = ({ action, shim }: Verdict) => (shim === undefined ? action : `${action} ${shim.toFixed(2)}`);

const ESTIMATE = "Hours are an estimate, from volume and the flow of the printer's line and layer at 40 mm/s.";

function lines(rows: readonly Row[], buy: ReturnType<typeof purchases>, quiet: boolean): string[] {
  const table = rows.map((row) => [
    row.name,
    wordsFor(row),
    row.hours === 0 ? "" : row.hours.toFixed(1),
    row.before?.hash ?? "",
    row.after?.hash ?? "",
    row.why,
  ]);
  const printed = rows.filter(({ hours }) => hours > 0);
  const total = printed.reduce((sum, { hours }) => sum + hours, 0);
  const kept = rows.filter(({ action }) => ["keep", "restack", "flip", "shim"].includes(action)).length;
  const plural = (count: number) => `${count} part${count === 1 ? "" : "s"}`;
  const changes = buy.map(({ item, more }) => `${more > 0 ? "buy" : "over"} ${Math.abs(more)} x ${item}`);
  return [
    ...(table.length === 0 ? [] : grid(["part", "do", ">print h", "old", "new", "why"], table)),
    ...changes.flatMap((words) => hanging("  ", words)),
    ...hanging("", `${plural(kept)} stay, ${plural(printed.length)} to print: about ${total.toFixed(1)} h`),
    ...(quiet ? [] : hanging("", ESTIMATE)),
  ];
}

function asData({ name, action, shim, why, hours, before, after }: Row): object {
  return {
    name,
    action,
    ...(shim === undefined ? {} : { shim }),
    hours,
    why,
    oldHash: before?.hash ?? null,
    newHash: after?.hash ?? null,
  };
}
