import { isMap, isScalar, isSeq, parseDocument, type Scalar, visit } from "yaml";
import type { Dice } from "../outside/random.ts";

/** What stands in the place of bytes: signs of YAML, control signs, letters of several bytes, halves of them. */
const SIGNS = [
  ..."{}[],:-?&*!|>'\"%@`#~=\\/ \t\n\r0179.eE+x_",
  "\u0000",
  "\u001b[2J",
  "\u009b",
  "\u202e",
  "\ufeff",
  "\ud83d",
  "ü",
  "螺",
  "🔩",
  "\n  ",
  ": ",
  " #",
  "<<: ",
  "&a ",
  "*a",
  "!!int ",
  "--- ",
];

/** What stands in the place of a value: ends of ranges, other kinds, other units, names of the language itself. */
const VALUES = [
  "0",
  "-1",
  "1e-300",
  "1e300",
  "1e999",
  ".inf",
  ".nan",
  "0x7fffffff",
  "9007199254740993",
  "true",
  "null",
  "~",
  "''",
  "[]",
  "{}",
  "[1, 2, 3]",
  "{ row: '608' }",
  "{ row: '608', width: 1e9, measured: true }",
  "{ width: 7 }",
  "18 in",
  "1/0 in",
  '3 1/2"',
  "2 N/mm",
  "460 mm",
  "1,5",
  "300 K",
  "-40 °F",
  "constructor",
  "toString",
  "__proto__",
  "../../etc/passwd",
  "/dev/zero",
  "A",
  "none",
  "M5",
  "'608'",
  "Tr8x2",
];

type Change = (text: string, dice: Dice, others: readonly string[]) => string;

/** Puts, removes, doubles or exchanges a few letters anywhere. */
const bytes: Change = (text, dice, others) => {
  let changed = text;
  for (let round = dice.whole(1, 4); round > 0; round--) {
    const at = dice.whole(0, changed.length);
    const cut = dice.pick([0, 0, 1, 1, 2, 9, 60]);
    const put = dice.pick([
      () => dice.pick(SIGNS),
      () => dice.pick(SIGNS).repeat(dice.pick([2, 30, 400])),
      () => changed.slice(at, at + dice.whole(1, 80)).repeat(dice.pick([1, 2, 40])),
      () => slice(dice.pick(others), dice),
      () => "",
    ])();
    changed = changed.slice(0, at) + put + changed.slice(at + cut);
  }
  return changed;
};

function slice(text: string, dice: Dice): string {
  const at = dice.whole(0, text.length);
  return text.slice(at, at + dice.whole(1, 120));
}

/** Puts another value in the place of one, as it would be typed. */
const values: Change = (text, dice) => {
  const places = scalarsOf(text);
  if (places.length === 0) return text;
  let changed = text;
  for (const { from, to } of dice
    .shuffled(places)
    .slice(0, dice.whole(1, 3))
    .sort((a, b) => b.from - a.from)) {
    const old = text.slice(from, to);
    const number = Number(old);
    const put =
      Number.isFinite(number) && old !== "" && dice.whole(0, 2) > 0
        ? String(number * dice.pick([-1, 0.1, 0.5, 0.9, 1.1, 2, 10, 1000]) + dice.pick([0, 0, 1e-9, 1]))
        : dice.pick(VALUES);
    changed = changed.slice(0, from) + put + changed.slice(to);
  }
  return changed;
};

function scalarsOf(text: string): { from: number; to: number }[] {
  const found: { from: number; to: number }[] = [];
  visit(parseDocument(text), {
    Scalar: (key, { range }) => {
      if (key !== "key" && range != null) found.push({ from: range[0], to: range[1] });
    },
  });
  return found;
}

/** Removes, doubles, renames and moves keys and entries, as a hurried editor would. */
const structure: Change = (text, dice) => {
  const document = parseDocument(text);
  const holders: { items: unknown[] }[] = [];
  visit(document, {
    Collection: (_, node) => {
      if (node.items.length > 0) holders.push(node as { items: unknown[] });
    },
  });
  for (let round = dice.whole(1, 3); round > 0 && holders.length > 0; round--) {
    const holder = dice.pick(holders);
    const at = dice.whole(0, Math.max(0, holder.items.length - 1));
    const item = holder.items[at];
    // A copy, for what is moved into itself has no end.
    const copy = (item as { clone?: () => unknown } | null)?.clone?.();
    const other = dice.pick(holders);
    dice.pick([
      () => void holder.items.splice(at, 1),
      () => void (item !== undefined && holder.items.push(copy ?? item)),
      () => void (isMap(holder) && isMap(other) && copy !== undefined && other.items.push(copy as never)),
      () => void (isSeq(holder) && isSeq(other) && copy !== undefined && other.items.push(copy as never)),
      () => rename(item, dice),
    ])();
  }
  return document.errors.length > 0 ? text : document.toString();
};

function rename(item: unknown, dice: Dice): void {
  const { key } = (item ?? {}) as { key?: unknown };
  if (!isScalar(key)) return;
  const word = String(key.value);
  const at = dice.whole(0, word.length);
  (key as Scalar).value = dice.pick([word.slice(0, at) + word.slice(at + 1), `${word}s`, dice.pick(VALUES), ""]);
}

/** Returns a preset changed in one of these ways, or in two; letters last, for what they leave may be slow to parse. */
export function mutate(text: string, dice: Dice, others: readonly string[]): string {
  const first = dice.pick([bytes, values, values, structure])(text, dice, others);
  return dice.whole(0, 3) === 0 ? bytes(first, dice, others) : first;
}
