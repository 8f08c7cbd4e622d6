import { nearest } from "../../core/nearest.ts";
import { metaOf } from "../../core/parameter.ts";
import type { AnyFamily, Design } from "../../parts/family.ts";
import { FAMILIES } from "../../parts/index.ts";
import { UNCALIBRATED } from "../../printing/printer.ts";
import { EXIT, type Io, trouble } from "../io.ts";
import { amount, columns, figure, wrap } from "../screen.ts";

const WIDTH = 96;

/** Lists the families, or tells everything about one. Returns the exit code. */
export function parts({ family: name, json }: { family?: string; json: boolean }, io: Io): number {
  if (name === undefined) return list(json, io);
  const names = FAMILIES.map((family) => family.name);
  const family = FAMILIES.find((candidate) => candidate.name === name);
  if (family === undefined)
    throw trouble(`there is no part family ${name}; the nearest is ${nearest(name, names) ?? names.join(", ")}`);
  const design = family.design(family.schema.parse({}), UNCALIBRATED);
  if (json) io.out(JSON.stringify(asData(family, design), undefined, 2));
  else for (const line of tell(family, design)) io.out(line);
  return EXIT.done;
}

function list(json: boolean, io: Io): number {
  if (json)
    io.out(
      JSON.stringify(
        FAMILIES.map(({ name, title, purpose }) => ({ name, title, purpose })),
        undefined,
        2,
      ),
    );
  else {
    for (const { name, purpose } of FAMILIES) {
      const [first = "", ...rest] = wrap(purpose, WIDTH - 14);
      for (const line of [`${name.padEnd(14)}${first}`, ...rest.map((words) => " ".repeat(14) + words)]) io.out(line);
    }
  }
  return EXIT.done;
}

function tell(family: AnyFamily, design: Design): string[] {
  return [
    `${family.name}: ${family.title}`,
    ...wrap(family.purpose, WIDTH),
    ...wrap(`Print: ${family.orientation}.`, WIDTH),
    ...family.sketch.split("\n"),
    "Parameters",
    ...parameterRows(family),
    "",
    "Derived dimensions, with the defaults",
    ...columns(
      [{ head: "key" }, { head: "symbol" }, { head: "value", right: true }, { head: "unit" }, { head: "meaning" }],
      design.dimensions.map(({ key, symbol, value, unit, meaning }) => [
        key,
        symbol,
        figure(value, unit),
        unit,
        meaning,
      ]),
    ),
    "",
    "Checks",
    ...family.checks.flatMap(({ name, why }) => [`  ${name}`, ...wrap(why, WIDTH - 6).map((line) => `      ${line}`)]),
    "",
    "Hardware, with the defaults",
    ...design.hardware.map(({ item, count }) => `  ${count} x ${item}`),
  ];
}

/** A long meaning goes on below itself rather than over the edge of the screen. */
function wrapTail(line: string): string[] {
  if (line.length <= WIDTH) return [line];
  const cut = line.lastIndexOf(" ", WIDTH);
  const indent = line.length - line.trimStart().length + 8;
  return [line.slice(0, cut), ...wrap(line.slice(cut), WIDTH - indent).map((words) => " ".repeat(indent) + words)];
}

function parameterRows(family: AnyFamily): string[] {
  const defaults = family.schema.parse({});
  return Object.entries(family.schema.shape).flatMap(([key, field]) => {
    const { symbol, unit, description, range, words, table } = metaOf(field as never);
    const usual = spelled(defaults[key], unit);
    const allowed = range === undefined ? "" : `, ${range} ${unit}`.trimEnd();
    const from = table === undefined ? "" : `, from tramwright stock ${table}`;
    const name = symbol === "" || symbol === key ? key : `${key} (${symbol})`;
    const head = `  ${name.padEnd(30)} ${usual}${allowed}${from}`;
    const meanings = Object.entries(words ?? {}).filter(([word, meaning]) => word !== meaning);
    return [
      ...wrapTail(head),
      ...wrap(description, WIDTH - 6).map((line) => `      ${line}`),
      ...meanings.flatMap(([word, meaning]) =>
        wrap(`${word}: ${meaning}`, WIDTH - 8).map((line, index) => `        ${index === 0 ? "" : "  "}${line}`),
      ),
    ];
  });
}

/** Returns a default as a preset would hold it. */
function spelled(value: unknown, unit: Parameters<typeof amount>[1]): string {
  if (value === undefined) return "derived";
  if (typeof value === "number") return amount(value, unit);
  if (Array.isArray(value)) return value.length === 0 ? "none" : value.map((one) => spelled(one, unit)).join(", ");
  if (typeof value !== "object" || value === null) return String(value);
  if ("key" in value) return String(value.key);
  return Object.entries(value)
    .map(([name, one]) => `${name} ${spelled(one, "")}`)
    .join(" ");
}

function asData(family: AnyFamily, design: Design): object {
  const { name, title, purpose, orientation, schema, checks } = family;
  const parameters = Object.entries(schema.shape).map(([key, field]) => ({ key, ...metaOf(field as never) }));
  return {
    name,
    title,
    purpose,
    orientation,
    parameters,
    dimensions: design.dimensions,
    checks: checks.map((check) => ({ name: check.name, why: check.why, trips: check.trips })),
    hardware: design.hardware,
  };
}
