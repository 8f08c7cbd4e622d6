import { presetSchema, SUBJECTS } from "../../presets/schema/preset-schema.ts";
import { nearestWords } from "../explain/nearest-words.ts";
import { EXIT, type Io, trouble } from "../io.ts";

/** Prints the JSON Schema of the presets of a family, of a stage or of a printer. Returns the exit code. */
export function schema(name: string | undefined, io: Io): number {
  if (name === undefined) throw trouble(`schema needs one of ${SUBJECTS.join(", ")}`);
  const found = presetSchema(name.trim().toLowerCase());
  if (found === undefined) throw trouble(`there is no preset of ${name}; ${nearestWords(name, SUBJECTS)}`);
  io.out(JSON.stringify(found, undefined, 2));
  return EXIT.done;
}
