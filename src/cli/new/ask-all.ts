import { trouble } from "../io.ts";
import type { Ask, Question } from "./question.ts";

/**
 * Returns the answers to questions that come one after the other, those given beforehand among them: each is checked,
 * and what nobody says is as usual. Undefined when the person stopped.
 */
export async function askAll(
  next: (given: Readonly<Record<string, string>>) => Question | undefined,
  given: Readonly<Record<string, string>>,
  ask: Ask | undefined,
): Promise<Readonly<Record<string, string>> | undefined> {
  const answers: Record<string, string> = { ...given };
  for (let question = next(answers); question !== undefined; question = next(answers)) {
    const answer = ask === undefined ? question.usual : await ask(question);
    if (answer === undefined) return undefined;
    answers[question.flag] = answer.trim() === "" ? question.usual : answer;
  }
  return answers;
}

/** Throws a trouble for the first answer of the command line that its question does not take. */
export function refuseWrong(questions: readonly Question[], given: Readonly<Record<string, string>>): void {
  for (const { flag, check } of questions) {
    const typed = given[flag];
    const checked = typed === undefined ? undefined : check(typed);
    if (checked !== undefined && "wrong" in checked) throw trouble(`--${flag}: ${checked.wrong}`);
  }
}
