import { exists } from "../files.ts";
import { EXIT, trouble } from "../io.ts";

/** Throws when a file is there that nobody has said may be replaced. */
export function refuseInTheWay(file: string, force: boolean): void {
  if (force || !exists(file)) return;
  const says = `${file} is there already and is left alone; -o names another file, --force replaces it`;
  throw trouble(says, EXIT.files);
}
