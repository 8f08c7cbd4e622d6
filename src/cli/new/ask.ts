import type { Readable, Writable } from "node:stream";
import { isCancel, select, text } from "@clack/prompts";
import type { Ask, Question } from "./question.ts";

/** Where questions are asked; the terminal, unless a test says otherwise. */
export interface Streams {
  readonly input: Readable;
  readonly output: Writable;
}

/** Returns what asks on a terminal: a word is chosen from a list, anything else is typed and checked at once. */
export function asker({ input, output }: Streams): Ask {
  return async (question) => {
    const answer = question.words === undefined ? await typed(question) : await chosen(question, question.words);
    return isCancel(answer) ? undefined : String(answer ?? "");
  };

  function typed({ asks, hint, usual, check }: Question): Promise<string | symbol> {
    const validate = (typed: string | undefined) => {
      const checked = check(typed === undefined || typed.trim() === "" ? usual : typed);
      return "wrong" in checked ? checked.wrong : undefined;
    };
    const message = hint === undefined ? asks : `${asks}\n   ${hint}`;
    return text({ message, placeholder: usual, defaultValue: usual, validate, input, output });
  }

  function chosen({ asks, usual }: Question, words: Readonly<Record<string, string>>): Promise<string | symbol> {
    const options = Object.entries(words).map(([value, meaning]) =>
      meaning === value ? { value, label: value } : { value, label: value, hint: meaning },
    );
    return select({ message: asks, options, initialValue: usual, input, output });
  }
}
