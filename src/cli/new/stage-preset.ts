import { slugFrom } from "../../presets/preset-file.ts";
import { trouble } from "../io.ts";
import { askAll, refuseWrong } from "./ask-all.ts";
import { answersOf, nextQuestion, questions } from "./stage-questions.ts";
import { starterStage } from "./starter-stage.ts";
import type { Wanted, Written } from "./wanted.ts";

/** Returns the plan of a stage to fill in; undefined when the person stopped. */
export async function stagePreset({ place, given, set, ask, say }: Wanted): Promise<Written | undefined> {
  if (set.length > 0) throw trouble("new stage takes no --set; write into the file, or use make --set");
  refuseWrong(questions(given), given);
  const answers = await askAll(nextQuestion, given, ask);
  if (answers === undefined) return undefined;
  if (ask !== undefined) say("looking for places where belts that are sold fit ...");
  const name = slugFrom(place.name);
  const { text, errors } = starterStage(answersOf(name, answers), { ...place, name });
  const left = `${errors} error${errors === 1 ? " is" : "s are"} left in it, which tramwright check ${place.file} tells`;
  return { text, notes: errors === 0 ? [] : [left] };
}
