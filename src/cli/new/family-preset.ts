import type { AnyFamily } from "../../parts/family.ts";
import type { Guide } from "../../parts/guide.ts";
import { parseParameters } from "../../presets/part-preset.ts";
import { slugFrom } from "../../presets/preset-file.ts";
import { UNCALIBRATED } from "../../printing/printer.ts";
import { familyFields } from "../explain/parameter-page.ts";
import { trouble } from "../io.ts";
import { chosenKeys } from "./chosen-keys.ts";
import { partText } from "./part-text.ts";
import { refuseStageFlags } from "./stage-flags.ts";
import type { Wanted, Written } from "./wanted.ts";

/** Returns a preset of a family to fill in; undefined when the person stopped. */
export async function familyPreset(
  family: AnyFamily,
  guide: Guide | undefined,
  wanted: Wanted,
): Promise<Written | undefined> {
  refuseStageFlags(family.name, wanted.given);
  const { first, measure } = guide ?? { first: [], measure: {} };
  const fields = familyFields(family, family.design(family.schema.parse({}), UNCALIBRATED));
  const chosen = await chosenKeys({ schema: family.schema, fields, first, how: measure }, wanted);
  if (chosen === undefined) return undefined;
  const [wrong] = parseParameters(family, chosen).complaints;
  if (wrong !== undefined) throw trouble(`${wrong.says}; set ${wrong.set}`);
  return { text: partText(family, chosen, { ...wanted.place, name: slugFrom(wanted.place.name) }), notes: [] };
}
