import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Plan } from "../schema/index.ts";
import { stranger, wrong } from "./complaint.ts";
import { isTouched, mayLackNames, touchedNames, type Unread } from "./unread.ts";

/** What a loop's list of nodes calls the motor. */
const MOTOR = "motor";

const WHY = {
  twice: "a belt meets each of its nodes once, so one of the two is another node",
  motorless: "all loops are turned by the one motor, and what this one runs round would stand still",
  none: "what no belt runs round stands still",
  several: "a node has one pulley, in the plane of one belt",
  named: "in the nodes of a loop nobody could tell one from the other",
};

/** Returns what is wrong with the names in loops, of loops, and of what belongs on a loop. */
export function wrongLoops(plan: Plan, unread: Unread = []): Diagnostic[] {
  const { loops } = plan;
  return [
    ...twoMeanings(plan),
    ...strangePulleys(plan, unread),
    ...Object.entries(loops).flatMap(([name, loop]) => wrongLoop(name, loop, knownNodes(plan, unread))),
    ...placesOnLoops(plan, unread),
  ];
}

/** Names of loops are told only where all of them are known. */
function strangePulleys(plan: Plan, unread: Unread): Diagnostic[] {
  if (mayLackNames(plan, unread, "loops") || isTouched(unread, "motor")) return [];
  const known = [...new Set([...Object.keys(plan.loops), ...touchedNames(unread, "loops")])];
  return plan.motor.pulleys.flatMap(({ loop }, index) =>
    stranger(["motor", "pulleys", index, "loop"], "loop", loop, known),
  );
}

interface Known {
  readonly nodes: readonly string[];
  /** Whether a name that is not among them may be one that could not be read. */
  readonly lacking: boolean;
}

function knownNodes(plan: Plan, unread: Unread): Known {
  const { screws, idlers } = plan;
  const read = [MOTOR, ...Object.keys(screws), ...Object.keys(idlers)];
  return {
    nodes: [...new Set([...read, ...touchedNames(unread, "screws"), ...touchedNames(unread, "idlers")])],
    lacking: mayLackNames(plan, unread, "screws") || mayLackNames(plan, unread, "idlers"),
  };
}

/**
 * Screws and idlers on no loop, or on two. As many on none as there are strange nodes in loops are what those nodes
 * should have named, and the strange ones are told of.
 */
function placesOnLoops(plan: Plan, unread: Unread): Diagnostic[] {
  const { nodes } = knownNodes(plan, unread);
  const strange = Object.values(plan.loops).flatMap((loop) => loop.nodes.filter((node) => !nodes.includes(node)));
  const places = [
    ...Object.keys(plan.screws).map((name) => ({ kind: "screws", name }) as const),
    ...Object.keys(plan.idlers).map((name) => ({ kind: "idlers", name }) as const),
  ];
  const onNone = ({ name }: { readonly name: string }) =>
    Object.values(plan.loops).every((loop) => !loop.nodes.includes(name));
  const meant = isTouched(unread, "loops") || places.filter(onNone).length <= new Set(strange).size;
  return places.filter((place) => !(meant && onNone(place))).flatMap(({ kind, name }) => onOneLoop(plan, kind, name));
}

/** A node's name must say what it is. */
function twoMeanings({ screws, idlers }: Plan): Diagnostic[] {
  const taken = Object.keys(screws).map((name) => name.toLowerCase());
  const reserved = (kind: string, name: string) =>
    name.toLowerCase() === MOTOR
      ? [wrong([kind, name], `${name} is what the loops call the motor`, "another name", WHY.named)]
      : [];
  return [
    ...Object.keys(screws).flatMap((name) => reserved("screws", name)),
    ...Object.keys(idlers).flatMap((name) => [
      ...reserved("idlers", name),
      ...(taken.includes(name.toLowerCase())
        ? [wrong(["idlers", name], `${name} is also the name of a screw`, "another name", WHY.named)]
        : []),
    ]),
  ];
}

function wrongLoop(name: string, { nodes, slide }: Plan["loops"][string], known: Known): Diagnostic[] {
  const path = ["loops", name, "nodes"];
  const strangers = known.lacking
    ? []
    : nodes.flatMap((node, index) => stranger([...path, index], "motor, screw or idler", node, known.nodes));
  const twice = nodes.flatMap((node, index) =>
    nodes.indexOf(node) < index
      ? [wrong([...path, index], `${node} stands twice in ${name}`, "each node once", WHY.twice)]
      : [],
  );
  // A node that names nothing may be meant for the motor, or for the one that slides.
  if (nodes.some((node) => !known.nodes.includes(node))) return [...strangers, ...twice];
  const motorless = nodes.includes(MOTOR)
    ? []
    : [wrong(path, `${name} does not run round the motor`, `nodes: [${[MOTOR, ...nodes].join(", ")}]`, WHY.motorless)];
  const slides =
    slide === undefined || nodes.includes(slide.node)
      ? []
      : stranger(["loops", name, "slide", "node"], `node of ${name}`, slide.node, nodes);
  return [...twice, ...motorless, ...slides];
}

/** Every screw and idler is turned by one belt: none leaves it still, two would need two heights of pulleys. */
function onOneLoop({ loops }: Plan, kind: "screws" | "idlers", name: string): Diagnostic[] {
  const on = Object.entries(loops).flatMap(([loop, { nodes }]) => (nodes.includes(name) ? [loop] : []));
  if (on.length === 1) return [];
  if (on.length > 1) {
    const says = `${name} is a node of ${on.join(" and ")}`;
    return [wrong([kind, name], says, `${name} in the nodes of one loop only`, WHY.several)];
  }
  const [only] = Object.keys(loops);
  const set = Object.keys(loops).length === 1 ? `${name} in nodes: of ${only}` : `${name} in nodes: of a loop`;
  return [wrong([kind, name], `${name} is on no loop`, set, WHY.none)];
}
