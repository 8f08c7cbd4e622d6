import { EXIT, type Trouble, trouble } from "./io.ts";

/** Returns the trouble of files that stand in the way and that this program did not write; there is one at least. */
export function notOurs(paths: readonly string[]): Error & Trouble {
  const [was, is, it] = paths.length > 1 ? ["were", "are", "them"] : ["was", "is", "it"];
  const names = paths.join(", ");
  return trouble(`${names} ${was} not written by tramwright and ${is} left alone; --force replaces ${it}`, EXIT.files);
}
