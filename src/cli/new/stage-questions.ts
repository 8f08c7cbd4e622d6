import { type Answers, barIn, lengthIn, USUAL, wordIn } from "./answers.ts";
import type { Question } from "./question.ts";
import { sizeQuestions } from "./stage-sizes.ts";

const UNITS = { mm: "millimetres", in: "inches" } as const;
const SCREWS = {
  "2": "light and narrow: a lamp, a camera, a shelf",
  "3": "a plate that stands firmly and is levelled easily",
  "4": "loads are shared by twist only: a wide frame that is stiff",
} as const;
const LOOPS = {
  "1": "one belt round all screws",
  "2": "a low one round the screws in front, a high one to the one behind",
} as const;

/** What is known so far, by option. */
export type Given = Readonly<Record<string, string>>;

const unitsOf = (given: Given): Answers["units"] => (given.units?.trim().toLowerCase() === "in" ? "in" : "mm");

/** Returns the next question about a stage that is not answered yet; undefined when all are. */
export function nextQuestion(given: Given): Question | undefined {
  return questions(given).find(({ flag }) => given[flag] === undefined);
}

/** Returns the questions about a stage; what was said before decides what is usual, and whether loops are asked for. */
export function questions(given: Given): Question[] {
  const units = unitsOf(given);
  const usual = USUAL[units];
  return [
    {
      flag: "units",
      asks: "What did you measure in?",
      usual: "mm",
      words: UNITS,
      check: (text) => wordIn(text, ["mm", "in"]),
    },
    {
      flag: "screws",
      asks: "How many lead screws carry the stage?",
      usual: "3",
      words: SCREWS,
      check: (text) => wordIn(text, ["2", "3", "4"]),
    },
    {
      flag: "bar",
      asks: "Which bar is the frame of?",
      hint: "Width x height of its section, and the width of its slot: tramwright stock bars lists them.",
      usual: usual.bar,
      check: barIn,
    },
    ...sizeQuestions(given, units),
    {
      flag: "lift",
      asks: `How far is it to rise, in ${UNITS[units]}?`,
      usual: usual.lift,
      check: (text) => lengthIn(text, units, 20, 800),
    },
    // Only three screws stand so that two belts reach them.
    ...(given.screws === undefined || given.screws.trim() === "3" || given.loops !== undefined ? [loops(given)] : []),
  ];
}

function loops({ screws = "3" }: Given): Question {
  const check = (text: string) => {
    if (text.trim() === "2" && screws.trim() !== "3")
      return { wrong: `two loops go with 3 screws, not with ${screws}` };
    return wordIn(text, ["1", "2"]);
  };
  return { flag: "loops", asks: "How many belts turn the screws?", usual: "1", words: LOOPS, check };
}

/** Returns the answers in mm; each has been checked. */
export function answersOf(name: string, given: Given): Answers {
  const units = unitsOf(given);
  const answerTo = (flag: string) => {
    const question = questions(given).find((one) => one.flag === flag);
    const checked = question?.check(given[flag] ?? question.usual);
    return checked !== undefined && "value" in checked ? checked.value : undefined;
  };
  return {
    name,
    units,
    screws: Number(answerTo("screws") ?? 3) as Answers["screws"],
    bar: answerTo("bar") as string,
    frame: answerTo("frame") as Answers["frame"],
    plate: answerTo("plate") as Answers["plate"],
    lift: answerTo("lift") as number,
    loops: Number(answerTo("loops") ?? 1) as Answers["loops"],
  };
}
