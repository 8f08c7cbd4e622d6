import type { Checked } from "./answers.ts";

/** One answer that is wanted: typed freely, or one of a few words. */
export interface Question {
  /** The option that answers it. */
  readonly flag: string;
  readonly asks: string;
  /** What it is when nothing is said. */
  readonly usual: string;
  /** How it is found, in words. */
  readonly hint?: string;
  /** The words it may be, with their meaning. */
  readonly words?: Readonly<Record<string, string>>;
  readonly check: (text: string) => Checked<unknown>;
}

/** Answers one question; undefined when the person has stopped it all. */
export type Ask = (question: Question) => Promise<string | undefined>;
