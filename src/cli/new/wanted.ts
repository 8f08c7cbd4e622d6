import type { Place } from "./part-text.ts";
import type { Ask } from "./question.ts";

/** What a new preset is wanted with. */
export interface Wanted {
  readonly place: Place;
  /** Answers given on the command line, by option. */
  readonly given: Readonly<Record<string, string>>;
  readonly set: readonly string[];
  /** Undefined where nobody can answer. */
  readonly ask: Ask | undefined;
  /** Talks while something takes long. */
  readonly say: (words: string) => void;
}

/** A preset as it is written, and what is to be said of it. */
export interface Written {
  readonly text: string;
  readonly notes: readonly string[];
}
