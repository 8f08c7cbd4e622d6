import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import type { Plan } from "../schema/index.ts";
import { soundBars } from "./sound-bars.ts";
import { isPlace, touchedNames, type Unread } from "./unread.ts";

/** The things of a plan that nothing can be said of, by their names: they are wrong, or name something that is. */
export interface Doubts {
  readonly bars: ReadonlySet<string>;
  readonly loops: ReadonlySet<string>;
  /** Screws whose foot is left out. */
  readonly screws: ReadonlySet<string>;
  readonly mounts: ReadonlySet<string>;
  readonly carriages: ReadonlySet<string>;
}

/** Returns what is left out of what follows, so that nothing is told that is only due to what is wrong already. */
export function doubtsOf(plan: Plan, strangers: readonly Diagnostic[], unread: Unread): Doubts {
  const wrong: Unread = [...unread, ...strangers.map(({ path }) => path)];
  const named = (...block: Path) => touchedNames(wrong, ...block);
  const sound = soundBars(plan, unread);
  const bars = new Set([...named("bars"), ...Object.keys(plan.bars).filter((name) => sound[name] === undefined)]);
  const onBar = (bar: string | undefined) => (bar === undefined ? bars.size > 0 : bars.has(bar));
  const { screws, carriages, plate } = plan;
  return {
    bars,
    loops: doubtfulLoops(plan, wrong, unread),
    screws: new Set([...named("screws"), ...namesWhere(screws, ({ bar }) => onBar(bar))]),
    mounts: new Set([...named("plate", "mounts"), ...namesWhere(plate.mounts, ({ bar }) => onBar(bar))]),
    carriages: new Set([
      ...named("carriages"),
      ...namesWhere(carriages, ({ post, arms }) => [post, ...arms].some((bar) => bars.has(bar))),
    ]),
  };
}

function namesWhere<Thing>(things: Readonly<Record<string, Thing>>, holds: (thing: Thing) => boolean): string[] {
  return Object.entries(things).flatMap(([name, thing]) => (holds(thing) ? [name] : []));
}

/** Loops that are wrong, run round what is wrong, or run round a motor that a loop left out would have moved. */
function doubtfulLoops(plan: Plan, wrong: Unread, unread: Unread): Set<string> {
  const { loops, screws, idlers } = plan;
  const known = ["motor", ...Object.keys(screws), ...Object.keys(idlers)];
  const misplaced = touchedNames([...unread, ...wrong.filter(isPlace)], "screws");
  const nodes = [...touchedNames(wrong, "idlers"), ...misplaced, ...onSeveral(plan)];
  const own = [
    ...touchedNames(wrong, "loops"),
    ...namesWhere(loops, (loop) => loop.nodes.some((node) => nodes.includes(node) || !known.includes(node))),
  ];
  const slides = (name: string) => loops[name]?.slide?.node === "motor";
  const motorMoved = own.some(slides) || own.some((name) => loops[name] === undefined);
  const led = motorMoved ? Object.keys(loops).filter((name) => !slides(name)) : [];
  return new Set([...own, ...led]);
}

/** Screws and idlers that more than one loop names: to which they belong is not known. */
function onSeveral({ loops, screws, idlers }: Plan): string[] {
  const times = (node: string) => Object.values(loops).filter(({ nodes }) => nodes.includes(node)).length;
  return [...Object.keys(screws), ...Object.keys(idlers)].filter((node) => times(node) > 1);
}
