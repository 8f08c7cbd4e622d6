import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Plan } from "../schema/index.ts";
import { stranger, wrong } from "./complaint.ts";

/** What a loop's list of nodes calls the motor. */
const MOTOR = "motor";

/** Returns what is wrong with the names in loops, of loops, and of what belongs on a loop. */
export function wrongLoops(plan: Plan): Diagnostic[] {
  const { loops, motor } = plan;
  const known = [MOTOR, ...Object.keys(plan.screws), ...Object.keys(plan.idlers)];
  return [
    ...twoMeanings(plan),
    ...motor.pulleys.flatMap(({ loop }, index) =>
      stranger(["motor", "pulleys", index, "loop"], "loop", loop, Object.keys(loops)),
    ),
    ...Object.entries(loops).flatMap(([name, loop]) => wrongLoop(name, loop, known)),
    ...Object.keys(plan.screws).flatMap((name) => onOneLoop(plan, "screws", name)),
    ...Object.keys(plan.idlers).flatMap((name) => onOneLoop(plan, "idlers", name)),
  ];
}

/** A node's name must say what it is. */
function twoMeanings({ screws, idlers }: Plan): Diagnostic[] {
  const taken = Object.keys(screws).map((name) => name.toLowerCase());
  const reserved = (kind: string, name: string) =>
    name.toLowerCase() === MOTOR
      ? [wrong([kind, name], `${name} is what the loops call the motor`, "another name")]
      : [];
  return [
    ...Object.keys(screws).flatMap((name) => reserved("screws", name)),
    ...Object.keys(idlers).flatMap((name) => [
      ...reserved("idlers", name),
      ...(taken.includes(name.toLowerCase())
        ? [wrong(["idlers", name], `${name} is also the name of a screw`, "another name")]
        : []),
    ]),
  ];
}

function wrongLoop(name: string, { nodes, slide }: Plan["loops"][string], known: readonly string[]): Diagnostic[] {
  const path = ["loops", name, "nodes"];
  const strangers = nodes.flatMap((node, index) => stranger([...path, index], "motor, screw or idler", node, known));
  const twice = nodes.flatMap((node, index) =>
    nodes.indexOf(node) < index ? [wrong([...path, index], `${node} stands twice in ${name}`, "each node once")] : [],
  );
  const motorless = nodes.includes(MOTOR)
    ? []
    : [wrong(path, `${name} does not run round the motor`, `[${[MOTOR, ...nodes].join(", ")}]`)];
  const slides =
    slide === undefined || nodes.includes(slide.node)
      ? []
      : stranger(["loops", name, "slide", "node"], `node of ${name}`, slide.node, nodes);
  return [...strangers, ...twice, ...motorless, ...slides];
}

/** Every screw and idler is turned by one belt: none leaves it still, two would need two heights of pulleys. */
function onOneLoop({ loops }: Plan, kind: "screws" | "idlers", name: string): Diagnostic[] {
  const on = Object.entries(loops).flatMap(([loop, { nodes }]) => (nodes.includes(name) ? [loop] : []));
  if (on.length === 1) return [];
  if (on.length > 1) {
    const says = `${name} is a node of ${on.join(" and ")}`;
    return [wrong([kind, name], says, `${name} in the nodes of one loop only`)];
  }
  const [only] = Object.keys(loops);
  const set = Object.keys(loops).length === 1 ? `${name} in nodes: of ${only}` : `${name} in nodes: of a loop`;
  return [wrong([kind, name], `${name} is on no loop`, set)];
}
