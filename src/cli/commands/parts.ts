import type { Check } from "../../parts/check.ts";
import type { AnyFamily, Design } from "../../parts/family.ts";
import { FAMILIES } from "../../parts/index.ts";
import { UNCALIBRATED } from "../../printing/printer.ts";
import { grid } from "../explain/grid.ts";
import { hanging } from "../explain/hanging.ts";
import { nearestWords } from "../explain/nearest-words.ts";
import type { Page } from "../explain/page.ts";
import type { ParameterField } from "../explain/parameter-field.ts";
import { parameterLines } from "../explain/parameter-lines.ts";
import { familyFields, PRINTER } from "../explain/parameter-page.ts";
import { printerPage } from "../explain/printer-page.ts";
import { shown } from "../explain/shown.ts";
import { STAGE, stagePage } from "../explain/stage-page.ts";
import { EXIT, type Io, trouble } from "../io.ts";

interface PartsArgs {
  /** The family to tell about; without it all are listed. */
  readonly family?: string;
  readonly json: boolean;
}

/** Lists the families, or tells everything about one. Returns the exit code. */
export function parts({ family: name, json }: PartsArgs, io: Io): number {
  if (name === undefined) {
    if (json) io.out(asJson(FAMILIES.map(({ name, title, purpose }) => ({ name, title, purpose }))));
    else for (const line of list(io)) io.out(line);
    return EXIT.done;
  }
  if (name.trim().toLowerCase() === PRINTER) return told(printerPage(), json, io);
  if (name.trim().toLowerCase() === STAGE) return told(stagePage(), json, io);
  const names = FAMILIES.map((family) => family.name);
  const family = FAMILIES.find((candidate) => candidate.name === name.trim().toLowerCase());
  if (family === undefined) throw trouble(`there is no part family ${name}; ${nearestWords(name, names)}`);
  const design = family.design(family.schema.parse({}), UNCALIBRATED);
  const fields = familyFields(family, design);
  if (json) io.out(asJson(asData(family, design, fields)));
  else for (const line of tell(family, design, fields, io)) io.out(line);
  return EXIT.done;
}

/** The files of a printer and of a stage are no parts, but what they hold is looked for here as well. */
function told({ title, lines, data }: Page, json: boolean, io: Io): number {
  if (json) io.out(asJson(data));
  else for (const line of [io.paint("bold", title), ...lines]) io.out(line);
  return EXIT.done;
}

const LEVELS = ["error", "warning", "note"] as const;

const asJson = (data: object) => JSON.stringify(data, undefined, 2);

function list(io: Io): string[] {
  const widest = Math.max(...FAMILIES.map(({ name }) => name.length));
  return [
    ...FAMILIES.flatMap(({ name, title, purpose }) => [
      `${io.paint("bold", name.padEnd(widest))}  ${title}`,
      ...hanging(" ".repeat(widest + 2), purpose),
    ]),
    "",
    io.paint("faint", "tramwright parts <family> tells its parameters, numbers and checks; make <family> makes it."),
    io.paint("faint", "tramwright parts stage tells what the plan of a whole machine holds; presets/stages has three."),
  ];
}

function tell(family: AnyFamily, design: Design, fields: readonly ParameterField[], io: Io): string[] {
  const head = (words: string) => ["", io.paint("bold", words)];
  const hint = (words: string) => io.paint("faint", `  ${words}`);
  return [
    `${io.paint("bold", family.name)}: ${family.title}`,
    ...hanging("", family.purpose),
    ...hanging("Print: ", `${family.orientation}.`),
    ...family.sketch.replace(/\s+$/, "").split("\n"),
    ...head("Parameters"),
    ...parameterLines(fields),
    hint("derived: worked out by the part. left out: nothing is set; the meaning says what then holds."),
    ...head("Numbers, with the defaults"),
    ...dimensionLines(design),
    hint(`tramwright explain ${family.name}.<key> tells where a number comes from.`),
    ...head("Checks"),
    ...family.checks.flatMap(checkLines),
    hint("tramwright explain <check> shows what trips it and what to set."),
    ...head("Hardware and limits, with the defaults"),
    ...hardwareLines(design),
  ];
}

function dimensionLines({ dimensions }: Design): string[] {
  return grid(
    ["key", "symbol", ">value", "unit", "meaning"],
    dimensions.map(({ key, symbol, value, unit, meaning }) => [key, symbol, shown(value, unit), unit, meaning]),
  );
}

function checkLines({ name, why, trips }: Check<never, never>): string[] {
  const levels = LEVELS.filter((level) => level in trips).join(" or ");
  return [`  ${name}`, ...hanging("      ", `${levels}: ${why}`)];
}

function hardwareLines({ hardware, companions, limits }: Design): string[] {
  const noted = (note: string | undefined) => (note === undefined ? "" : ` (${note})`);
  const lines = [
    ...hardware.flatMap(({ item, count, note }) => hanging(`  ${count} x `, `${item}${noted(note)}`)),
    ...companions.flatMap(({ family, count }) => hanging(`  ${count} x `, `${family}, printed as well`)),
  ];
  return [
    ...(lines.length === 0 ? ["  nothing to buy"] : lines),
    ...limits.flatMap((limit) => hanging("  limit ", limit)),
  ];
}

function asData(family: AnyFamily, design: Design, fields: readonly ParameterField[]): object {
  const { name, title, purpose, orientation, sketch, checks } = family;
  const { dimensions, hardware, companions, limits } = design;
  return {
    name,
    title,
    purpose,
    orientation,
    sketch,
    parameters: fields.map(({ usual, ...field }) => ({ ...field, default: plain(usual) })),
    dimensions,
    checks: checks.map((check) => ({ name: check.name, why: check.why, trips: check.trips })),
    hardware,
    companions,
    limits,
  };
}

/** Returns a default as a preset would hold it: a bought item is the key of its row. */
function plain(usual: unknown): unknown {
  if (Array.isArray(usual)) return usual.map(plain);
  return typeof usual === "object" && usual !== null && "key" in usual ? usual.key : (usual ?? null);
}
