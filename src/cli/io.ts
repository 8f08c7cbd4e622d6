/** Where words go: results to `out`, talk to `err`. Both add the line's end. */
export interface Io {
  readonly out: (line: string) => void;
  readonly err: (line: string) => void;
  /** Paints words, or returns them as they are where colour is off. */
  readonly paint: Paint;
  /** Tells what is being done, on a terminal and where it takes long. */
  readonly progress?: (words: string) => void;
  /** How messages are told; in full where it is not said. */
  readonly messages?: MessageForm;
  /** Whether what is otherwise left out is told as well. */
  readonly verbose?: boolean;
}

/** How messages are told: in full, one line each for editors, or one JSON document a line for programs. */
export const MESSAGE_FORMS = ["full", "short", "json"] as const;
export type MessageForm = (typeof MESSAGE_FORMS)[number];

export type Ink = "red" | "yellow" | "blue" | "bold" | "faint";
export type Paint = (ink: Ink, words: string) => string;

const CODES: Readonly<Record<Ink, readonly [number, number]>> = {
  red: [31, 39],
  yellow: [33, 39],
  blue: [34, 39],
  bold: [1, 22],
  faint: [2, 22],
};

/** Returns a painter; `wanted` is what the user typed, the rest decides when it is "auto". */
export function painter(
  wanted: string,
  environment: Readonly<Record<string, string | undefined>>,
  terminal: boolean,
): Paint {
  const forced = environment.FORCE_COLOR !== undefined && environment.FORCE_COLOR !== "0";
  const plain = (environment.NO_COLOR ?? "") !== "" || environment.TERM === "dumb";
  const on = wanted === "always" || (wanted !== "never" && !plain && (forced || terminal));
  return (ink, words) => (on ? `\u001b[${CODES[ink][0]}m${words}\u001b[${CODES[ink][1]}m` : words);
}

/** What the shell is told. */
export const EXIT = { done: 0, errors: 1, usage: 2, files: 3, fault: 70 } as const;

/** Trouble that is the user's to mend: said in one line, with the exit code it ends with. */
export interface Trouble {
  readonly trouble: string;
  readonly exit: (typeof EXIT)["usage" | "files"];
}

/** Returns an exception that `main` prints as one line. */
export function trouble(says: string, exit: Trouble["exit"] = EXIT.usage): Error & Trouble {
  return Object.assign(new Error(says), { trouble: says, exit });
}

export function isTrouble(thrown: unknown): thrown is Error & Trouble {
  return thrown instanceof Error && "trouble" in thrown;
}
