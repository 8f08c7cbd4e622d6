import { basename, dirname } from "node:path";
import { GUIDES } from "../../parts/guides.ts";
import { FAMILIES } from "../../parts/index.ts";
import { inCurrentFormat } from "../../presets/formats.ts";
import { kindOf } from "../../presets/preset-file.ts";
import { readYaml, type YamlFile } from "../../presets/read.ts";
import { rewritten } from "../../presets/rewrite.ts";
import { HOW_TO_MEASURE } from "../../printing/calibration.ts";
import { UNCALIBRATED } from "../../printing/printer.ts";
import type { ParameterField } from "../explain/parameter-field.ts";
import { familyFields, printerFields } from "../explain/parameter-page.ts";
import { readText } from "../file-text.ts";
import { writeSet } from "../files.ts";
import { EXIT, type Io, trouble } from "../io.ts";
import { comment } from "./comment.ts";
import { HEADING_OPTIONAL, modeline } from "./heading.ts";
import { refuseInTheWay } from "./in-the-way.ts";
import { keyLines } from "./key-lines.ts";
import { schemaPath } from "./schema-path.ts";

interface FromArgs {
  readonly from: string;
  readonly output: string | undefined;
  readonly force: boolean;
  readonly json: boolean;
}

/** What a preset may hold: its fields, and how each is measured. */
interface Subject {
  readonly name: string;
  readonly fields: readonly ParameterField[];
  readonly how: Readonly<Partial<Record<string, string>>>;
}

/** Writes a preset as today's format has it, its comments and order kept. Returns the exit code. */
export function fromPreset({ from, output = from, force, json }: FromArgs, io: Io): number {
  const text = readText(from);
  const file = readYaml(from, text);
  const [wrong] = file.complaints;
  if (wrong !== undefined) throw trouble(`${from}:${wrong.place?.line ?? 1}: ${wrong.diagnostic.says}`);
  const { name, fields, how } = subjectOf(inCurrentFormat(file));
  const below = (keys: readonly string[], indent: string) => missing(fields, how, { keys, indent, text });
  const folder = output === "-" ? "." : dirname(output);
  const result = rewritten(text, { modeline: modeline(schemaPath(name, folder)), below });
  if (output === "-") {
    io.out(result.trimEnd());
    return EXIT.done;
  }
  refuseInTheWay(output, force);
  writeSet(folder, [{ name: basename(output), bytes: new TextEncoder().encode(result) }], { force: true });
  if (json) io.out(JSON.stringify({ file: output, subject: name, name: basename(output), notes: [] }, undefined, 2));
  else io.out(`${output} written: ${from} as it is written today`);
  return EXIT.done;
}

function subjectOf(file: YamlFile): Subject {
  const kind = kindOf(file);
  if (kind === "stage") return { name: kind, fields: [], how: {} };
  if (kind === "printer") return { name: kind, fields: printerFields(), how: HOW_TO_MEASURE };
  const part = (file.data as { part?: unknown } | null)?.part;
  const family = FAMILIES.find(({ name }) => name === part);
  if (family === undefined) throw trouble(`${file.name} is no preset of a part, a stage or a printer`);
  const fields = familyFields(family, family.design(family.schema.parse({}), UNCALIBRATED));
  return { name: family.name, fields, how: GUIDES[family.name]?.measure ?? {} };
}

/** Returns the keys that a preset lacks, as comments; what stands there as a comment already is not said again. */
function missing(
  fields: Subject["fields"],
  how: Subject["how"],
  { keys, indent, text }: { readonly keys: readonly string[]; readonly indent: string; readonly text: string },
): string[] {
  const lacking = fields.filter(({ key }) => !keys.includes(key) && !new RegExp(`^\\s*# ?${key}:`, "m").test(text));
  if (lacking.length === 0) return [];
  const lines = lacking.flatMap((field) => ["", ...keyLines(indent, { field, how: how[field.key], set: false })]);
  return ["", ...comment(indent, "", HEADING_OPTIONAL), ...lines];
}
