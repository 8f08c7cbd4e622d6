import { isAbsolute, join, relative, resolve } from "node:path";

/**
 * Returns where a preset in a folder finds its schema, which is shipped beside the program: from that folder where the
 * program lies within the working folder, so that both may be moved together; else in full.
 */
export function schemaPath(subject: string, folder: string, program: string = __dirname): string {
  const schema = join(program, "..", "presets", "schemas", `${subject}.json`);
  const within = relative(resolve("."), schema);
  const near = !within.startsWith("..") && !isAbsolute(within);
  return (near ? relative(resolve(folder), schema) : schema).replaceAll("\\", "/");
}
