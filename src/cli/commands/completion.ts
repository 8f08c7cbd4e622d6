import { bash } from "../completion/bash.ts";
import { fish } from "../completion/fish.ts";
import { type Grammar, grammar } from "../completion/grammar.ts";
import { powershell } from "../completion/powershell.ts";
import { zsh } from "../completion/zsh.ts";
import { nearestWords } from "../explain/nearest-words.ts";
import { SHELLS } from "../help.ts";
import { EXIT, type Io, trouble } from "../io.ts";

const SCRIPTS: Readonly<Record<(typeof SHELLS)[number], (words: Grammar) => string>> = { bash, zsh, fish, powershell };

/** Prints the script by which a shell completes command lines of this program. Returns the exit code. */
export function completion(name: string | undefined, io: Io): number {
  if (name === undefined) throw trouble(`completion needs one of ${SHELLS.join(", ")}`);
  const shell = SHELLS.find((one) => one === name.trim().toLowerCase());
  if (shell === undefined) throw trouble(`there is no script for ${name}; ${nearestWords(name, SHELLS)}`);
  io.out(SCRIPTS[shell](grammar()).trimEnd());
  return EXIT.done;
}
