import { defect } from "../core/defects.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import type { Piece } from "../parts/piece.ts";
import type { Draft } from "./make.ts";
import type { StagePart } from "./stage-parts.ts";

/** Where the files of a machine's parts stand in the folder of its set. */
export const PARTS = "parts/";

/** Returns the name of the file that holds one body of a part. */
export function solidFile(part: string, { name }: Pick<Piece, "name">): string {
  return `${part}${name === "" ? "" : `-${name}`}.stl`;
}

/** Returns the name of the file that holds all bodies of a part, and its preset. */
export function packageFile(part: string): string {
  return `${part}.3mf`;
}

/** Returns the name of the sheet that lies beside a part. */
export function sheetFile(part: string): string {
  return `${part}.md`;
}

/** What one preset becomes. */
interface Order {
  /** The preset's file, for the message. */
  readonly file: string;
  readonly drafts: readonly Draft[];
}

/** Returns the errors of each order whose files an order of the same run, itself included, would write as well. */
export function namesTakenTwice(orders: readonly Order[]): Diagnostic[][] {
  const names = orders.map(({ drafts }) => drafts.flatMap(namesOf));
  const owners = new Map<string, number[]>();
  for (const [index, own] of names.entries()) {
    for (const name of own) owners.set(name, [...(owners.get(name) ?? []), index]);
  }
  return orders.map(({ file }, index) => {
    const first = names[index]?.find((name) => (owners.get(name)?.length ?? 0) > 1);
    if (first === undefined) return [];
    const other = owners.get(first)?.find((owner) => owner !== index) ?? index;
    return [taken(first, file, orders[other]?.file ?? file)];
  });
}

/** A part with an error is not written, and takes no name. */
function namesOf({ request, pieces }: Draft): string[] {
  if (pieces.length === 0) return [];
  const solids = pieces.map((piece) => solidFile(request.name, piece));
  return [...solids, packageFile(request.name), sheetFile(request.name)];
}

function taken(name: string, file: string, other: string): Diagnostic {
  const says = other === file ? `two bodies of ${file} would be written to ${name}` : `${other} writes ${name} as well`;
  return defect("file-name-taken-twice", {
    level: "error",
    path: ["name"],
    says,
    set: "name: another one, in one of the two files",
  });
}

/** Returns the errors of parts of one machine whose files would have one name. */
export function partNamesTwice(parts: readonly StagePart[]): Diagnostic[] {
  const names = parts.map(({ request }) => request.name);
  return parts
    .filter(({ request }, index) => names.indexOf(request.name) !== index)
    .map(({ request, owner }) =>
      defect("file-name-taken-twice", {
        level: "error",
        path: owner.path,
        says: `two parts of the machine would be written to ${PARTS}${request.name}`,
        set: "another name for the thing in the plan that the part belongs to",
      }),
    );
}
