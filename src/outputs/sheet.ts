import type { Diagnostic } from "../core/diagnostic.ts";
import { CAUTIONS } from "../parts/cautions.ts";
import type { Design } from "../parts/family.ts";
import type { Piece } from "../parts/piece.ts";
import type { Printer } from "../printing/printer.ts";

/** One printed body on the sheet: what is drawn and what came out. */
export interface SheetPiece {
  readonly file: string;
  readonly piece: Piece;
  readonly size: readonly [number, number, number];
  readonly volume: number;
  readonly mass: number;
}

export interface Sheet {
  readonly name: string;
  readonly hash: string;
  readonly purpose: string;
  readonly design: Design;
  readonly printer: Printer;
  readonly pieces: readonly SheetPiece[];
  readonly diagnostics: readonly Diagnostic[];
}

const fixed = (value: number, digits: number) => value.toFixed(digits).replace(/\.?0+$/, "") || "0";
const grams = (mass: number) => (mass < 10 ? mass.toFixed(1) : mass.toFixed(0));
/** Three decimals, one above 100; what is smaller than they show keeps two digits. */
const short = (value: number) =>
  value !== 0 && Math.abs(value) < 0.01
    ? String(Number(value.toPrecision(2)))
    : fixed(value, Math.abs(value) >= 100 ? 1 : 3);

/** Returns the sheet that lies beside the print: what it is, how to print it, what to buy, measure and look out for. */
export function sheet(of: Sheet): string {
  const { name, hash, design, purpose } = of;
  return `${[
    `# ${name}`,
    `Made by tramwright from preset ${hash}. ${design.title}. ${purpose}`,
    ...section("Print", printing(of)),
    ...section("Measure after printing", measures(of)),
    ...section(
      "Hardware",
      design.hardware.map(({ item, count, note }) => `- ${count} x ${item}${note === undefined ? "" : ` (${note})`}`),
    ),
    ...section(
      "Limits",
      design.limits.map((limit) => `- ${limit}`),
    ),
    ...section("Found", findings(of.diagnostics)),
    ...section(
      "Cautions",
      design.cautions.map((caution) => `- ${CAUTIONS[caution]}`),
    ),
    ...section("Dimensions", dimensions(design)),
  ].join("\n\n")}\n`;
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [`## ${title}`, lines.join("\n")];
}

function printing({ design, printer, pieces }: Sheet): string[] {
  const { wallLines, line, layer, coverLayers, infill } = printer;
  const filling = design.solid ? "infill 100 %: the load figures count on it" : `infill ${infill} %`;
  return [
    ...pieces.map(({ file, piece, size, volume, mass }) => {
      const box = size.map((side) => side.toFixed(1)).join(" x ");
      return `- ${piece.count} x ${file}: ${piece.title}, ${box} mm, ${(volume / 1000).toFixed(1)} cm3, about ${grams(mass)} g`;
    }),
    `- ${design.material}, layer ${layer} mm, ${wallLines} wall lines of ${line} mm, ${coverLayers} closed layers, ${filling}`,
    `- No supports. Lies as follows: ${design.orientation}.`,
  ];
}

function measures({ pieces }: Sheet): string[] {
  const rows = pieces.flatMap(({ file, piece }) =>
    piece.measures.map(
      ({ what, expected, tolerance }) => `| ${file} | ${what} | ${expected.toFixed(2)} | ${tolerance.toFixed(2)} |`,
    ),
  );
  return rows.length === 0 ? [] : ["| part | what | expected mm | +- mm |", "|---|---|---|---|", ...rows];
}

function findings(diagnostics: readonly Diagnostic[]): string[] {
  return diagnostics.map(
    ({ level, name, says, set }) => `- ${level}: ${plain(says)} (\`${name}\`). Set: ${plain(set)}`,
  );
}

/** Returns words on one line in which nothing is markup: reasons for accepting an error come from the preset. */
function plain(words: string): string {
  const line = words.replace(/[\s\p{Cc}]+/gu, " ");
  return line.replace(/[\\`<[|]/g, "\\$&");
}

function dimensions({ dimensions: numbers }: Design): string[] {
  const rows = numbers.map(({ symbol, value, unit, meaning, formula }) => {
    const how = formula.startsWith('"') ? formula.replaceAll('"', "") : `\`${formula}\``;
    return `| ${symbol} | ${short(value)} | ${unit} | ${meaning} | ${how.replaceAll("|", "\\|")} |`;
  });
  return ["| symbol | value | unit | meaning | formula |", "|---|---|---|---|---|", ...rows];
}
