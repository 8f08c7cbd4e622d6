import type { AnyFamily } from "../../parts/family.ts";
import { GUIDES } from "../../parts/guides.ts";
import { UNCALIBRATED } from "../../printing/printer.ts";
import { familyFields } from "../explain/parameter-page.ts";
import { presetValue } from "../explain/preset-value.ts";
import { comment } from "./comment.ts";
import { HEADING_OPTIONAL, HOW_TO_WRITE, modeline } from "./heading.ts";
import { keyLines } from "./key-lines.ts";

/** What the file is to be: its name as the part has it, its name as a file, its schema. */
export interface Place {
  readonly name: string;
  readonly file: string;
  readonly schema: string;
}

/** Returns a preset of a family to fill in: what is measured or chosen first, the rest as comments with its default. */
export function partText(family: AnyFamily, chosen: Readonly<Record<string, unknown>>, place: Place): string {
  const { name, title, purpose, orientation, sketch } = family;
  const { first, measure } = GUIDES[name] ?? { first: [], measure: {} };
  const fields = familyFields(family, family.design(family.schema.parse({}), UNCALIBRATED));
  const isFirst = (key: string) => first.includes(key) || key in chosen;
  const byOrder = [...first, ...Object.keys(chosen).filter((key) => !first.includes(key))];
  const ahead = byOrder.flatMap((key) => fields.filter((field) => field.key === key));
  const linesOf = (set: boolean) => (field: (typeof fields)[number]) => [
    "",
    ...keyLines("  ", { field, value: chosen[field.key] ?? field.usual, how: measure[field.key], set }),
  ];
  return [
    modeline(place.schema),
    ...comment("", "", title),
    ...comment("", "", purpose),
    ...comment("", "Print: ", orientation),
    ...sketch
      .trimEnd()
      .split("\n")
      .map((line) => `# ${line}`.trimEnd()),
    "#",
    ...HOW_TO_WRITE.flatMap((words) => comment("", "", words)),
    ...comment("", "", `Then: tramwright check ${place.file}, and tramwright make ${place.file}`),
    "",
    "format: 1",
    `part: ${name}`,
    `name: ${presetValue(place.name)}`,
    "# The printer that makes it: tramwright new printer writes such a file; else usual values hold.",
    "# printer: my-printer.yaml",
    "",
    "parameters:",
    "  # ---- Measured or chosen for every part",
    ...ahead.flatMap(linesOf(true)),
    "",
    ...comment("  ", "", HEADING_OPTIONAL),
    ...fields.filter(({ key }) => !isFirst(key)).flatMap(linesOf(false)),
    "",
  ].join("\n");
}
