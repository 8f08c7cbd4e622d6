import { kindOf } from "../presets/preset-file.ts";
import { readPrinterPreset } from "../presets/printer-preset.ts";
import type { YamlFile } from "../presets/read.ts";
import type { Derived, Options } from "./answers.ts";
import { anyError, complaintsOf, opened } from "./opened.ts";
import { derivedPart } from "./part-answer.ts";
import { derivedStage } from "./stage-answer.ts";

/** Returns what the text of a preset of any kind says, and arithmetic of it. Never throws, whatever the text is. */
export function derivedText(text: string, options: Options, version: string): Derived {
  const file = opened(text, options);
  const kind = kindOf(file);
  if (kind === "printer") return printerAnswer(file);
  return kind === "stage" ? derivedStage(file, options, version) : { ...derivedPart(file, options), kind };
}

function printerAnswer(file: YamlFile): Derived {
  const { value, complaints } = readPrinterPreset(file);
  const messages = [...(file.notes ?? []), ...complaints];
  const { printer } = (file.data ?? {}) as { readonly printer?: unknown };
  return {
    kind: "printer",
    name: typeof printer === "string" ? printer : undefined,
    ok: value !== undefined && !anyError(messages),
    complaints: complaintsOf(messages),
    parts: [],
    report: [],
  };
}
