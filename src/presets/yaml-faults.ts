import { type Document, isAlias, isCollection, isPair, isScalar, type Node, visit, type YAMLMap } from "yaml";
import { spelled, unprintableIn } from "../core/unprintable.ts";
import { DEEPEST, type Excess, tooDeep } from "./yaml-limits.ts";

/** A preset needs few references; a chain of them is how a small file becomes a huge one. */
export const MOST_ALIASES = 16;

const TOO_OFTEN = `the file refers to itself too often (*): a preset does so at most ${MOST_ALIASES} times`;

const CHAIN = "a reference (*) leads to others, and such a chain may be as long as it likes";

/** A key that JavaScript objects do not hold like others: it would vanish without a word. */
const FORBIDDEN = "__proto__";

type Parsed = Document.Parsed;

/** Returns what is wrong with a text that YAML has no complaint of, yet that cannot stand in a preset. */
export function faultsIn(document: Parsed): Excess[] {
  const faults: Excess[] = [];
  const aliases: Node[] = [];
  const tell = (node: unknown, says: string, set: string) => {
    const [from, to] = (node as Node | null)?.range ?? [0, 0];
    faults.push({ from, to, says, set });
  };
  visit(document, {
    Collection: (_, node, path) => {
      const deep = path.filter(isCollection).length >= DEEPEST;
      if (deep) tell(node, tooDeep(0, 0).says, tooDeep(0, 0).set);
      else if ("items" in node && node.items.some(isPair)) keyFaults(node as YAMLMap, tell);
      return deep ? visit.BREAK : undefined;
    },
    Alias: (_, alias) => {
      aliases.push(alias);
      // More than these are refused below; to look each of them up would take long.
      if (alias.source === "" || aliases.length > MOST_ALIASES) return;
      const meant = alias.resolve(document);
      if (meant !== undefined && holdsAlias(meant)) tell(alias, CHAIN, "the values themselves");
      if (meant !== undefined) return;
      const says = `*${alias.source} refers to &${alias.source}, which does not stand before it`;
      tell(alias, says, `the value itself, or text in quotation marks: "*${alias.source}"`);
    },
    Scalar: (_, scalar) => {
      const sign = typeof scalar.value === "string" ? unprintableIn(scalar.value) : undefined;
      if (sign !== undefined)
        tell(scalar, `this text has a sign that cannot be seen: ${spelled(sign)}`, "the text without it");
    },
  });
  const [surplus] = aliases.slice(MOST_ALIASES);
  if (surplus !== undefined) tell(surplus, TOO_OFTEN, "the values themselves");
  return faults;
}

function holdsAlias(node: Node): boolean {
  let found = false;
  visit(node, {
    Alias: () => {
      found = true;
      return visit.BREAK;
    },
  });
  return found;
}

/** Tells of keys that are no words, or that the data cannot hold. */
function keyFaults({ items }: YAMLMap, tell: (node: unknown, says: string, set: string) => void): void {
  for (const { key, value } of items) {
    if (isAlias(key)) continue;
    if (!isScalar(key) || key.value === null) tell(key ?? value, "a key is no word", "key: value, one per line");
    else if (String(key.value) === FORBIDDEN)
      tell(key, `${FORBIDDEN} is not a key of any preset`, "the file without it");
  }
}
