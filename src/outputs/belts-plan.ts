import { outlineBetween } from "../stage/loops/bars.ts";
import type { BeltNode, LoopChoice, Stage } from "../stage/machine.ts";
import type { Label } from "./svg/labels.ts";
import { circle, line, mark, mm, type Point, polygon, type Segment } from "./svg/marks.ts";

export type Drawn = Pick<Stage, "plan" | "pulleys" | "loops">;

/** Colours of the loops, dark enough to be told apart in grey. */
export const COLOURS = ["#b3261e", "#1a56a8", "#2e6b34"] as const;

/** A view: what is drawn, the lines that labels keep off, and the labels. mm on the sheet, y downwards. */
export interface View {
  readonly marks: readonly string[];
  readonly lines: readonly Segment[];
  readonly labels: readonly Label[];
  readonly corners: readonly Point[];
}

/** How a place of the machine lies on the sheet: y turned over. */
export const onSheet = ({ x, y }: Point): Point => ({ x, y: -y });

const colourOf = (index: number) => COLOURS[index % COLOURS.length] as string;

/** Returns the belts looked down on. */
export function planView({ plan, loops }: Drawn): View {
  const bars = Object.entries(plan.bars).flatMap(([name, bar]) => {
    const outline = outlineBetween(bar, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY)?.map(onSheet);
    const upright = Math.hypot(bar.to[0] - bar.from[0], bar.to[1] - bar.from[1]) < 1e-6;
    return outline === undefined ? [] : [{ name, moves: bar.moves, upright, outline }];
  });
  const screws = Object.entries(plan.screws).map(([name, { at, screw }]) => ({
    name,
    at: onSheet({ x: at[0], y: at[1] }),
    radius: screw.values.diameter / 2,
  }));
  const motor = motorPlace(plan, loops);
  const body = plan.motor.motor.values.body / 2;
  const square = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([x = 0, y = 0]) => ({ x: motor.x + x * body, y: motor.y + y * body }));
  return {
    marks: [
      ...bars.map(({ outline, moves }) => polygon(outline, { class: moves ? "bar moves" : "bar" })),
      polygon(square, { class: "motor" }),
      ...screws.flatMap(({ at, radius }) => [circle(at, radius, { class: "screw" }), ...crossAt(at, radius + 3)]),
      ...loops.flatMap((loop, index) => loopMarks(loop, colourOf(index))),
    ],
    lines: [
      ...loops.flatMap(({ belt }) => belt.spans.map(flipped)),
      ...bars.flatMap(({ outline, upright }) => (upright ? crossed(outline) : edges(outline))),
      ...loops.flatMap(({ nodes }) => nodes.flatMap(flanges)),
      ...edges(square),
    ],
    labels: [...nodeLabels(plan, loops), ...spanLabels(loops), ...bars.map(barLabel)],
    corners: [
      ...bars.flatMap(({ outline }) => outline),
      ...square,
      ...loops.flatMap(({ nodes }) => nodes.flatMap(around)),
      ...screws.map(({ at }) => at),
    ],
  };
}

const flipped = ({ from, to }: Segment): Segment => ({ from: onSheet(from), to: onSheet(to) });

function edges(outline: readonly Point[]): Segment[] {
  return outline.map((from, index) => ({ from, to: outline[(index + 1) % outline.length] as Point }));
}

/** The flanges of a node as labels keep off them: the square round them; its diagonals keep short ones out of it. */
function flanges(node: BeltNode): Segment[] {
  const [one, other] = around(node) as [Point, Point];
  return crossed([one, { x: other.x, y: one.y }, other, { x: one.x, y: other.y }]);
}

/** The edges of a small shape with four corners, and its diagonals. */
function crossed(outline: readonly Point[]): Segment[] {
  const [one, two, three, four] = outline as readonly [Point, Point, Point, Point];
  return [...edges(outline), { from: one, to: three }, { from: two, to: four }];
}

function around(node: BeltNode): Point[] {
  const { x, y } = onSheet(node);
  return [
    { x: x - node.flange, y: y - node.flange },
    { x: x + node.flange, y: y + node.flange },
  ];
}

function motorPlace(plan: Drawn["plan"], loops: readonly LoopChoice[]): Point {
  const found = loops.flatMap(({ nodes }) => nodes).find(({ kind }) => kind === "motor");
  return onSheet(found ?? { x: plan.motor.at[0], y: plan.motor.at[1] });
}

function crossAt({ x, y }: Point, reach: number): string[] {
  return [
    line({ x: x - reach, y }, { x: x + reach, y }, { class: "axis" }),
    line({ x, y: y - reach }, { x, y: y + reach }, { class: "axis" }),
  ];
}

function loopMarks({ nodes, belt }: LoopChoice, colour: string): string[] {
  const bodies = nodes.flatMap((node) => [
    circle(onSheet(node), node.flange, { class: "flange", stroke: colour }),
    circle(onSheet(node), node.radius, { class: "pitch", stroke: colour }),
    ...crossAt(onSheet(node), 3),
  ]);
  return [...bodies, mark("path", { d: pathOf(nodes, belt), class: "belt", stroke: colour })];
}

/** The pitch line of a belt: spans and arcs in turn, as it travels. */
function pathOf(nodes: readonly BeltNode[], { spans, wraps }: LoopChoice["belt"]): string {
  const place = (point: Point) => `${mm(onSheet(point).x)} ${mm(onSheet(point).y)}`;
  const last = spans.at(-1);
  if (last === undefined) return "";
  const steps = nodes.map(({ radius, inside }, index) => {
    const { from, to } = spans[index] as (typeof spans)[number];
    const large = (wraps[index] as number) > 180 ? 1 : 0;
    return `A ${mm(radius)} ${mm(radius)} 0 ${large} ${inside ? 0 : 1} ${place(from)} L ${place(to)}`;
  });
  return `M ${place(last.to)} ${steps.join(" ")} Z`;
}

/** One label for each place: what stands there, and how the belt of each loop lies on it. */
function nodeLabels(plan: Drawn["plan"], loops: readonly LoopChoice[]): Label[] {
  const places = new Map<string, { node: BeltNode; lines: string[]; colour: string; flange: number }>();
  for (const [index, { loop, nodes, belt, meshes, slid }] of loops.entries()) {
    for (const [at, node] of nodes.entries()) {
      const own = places.get(node.name) ?? { node, lines: [], colour: colourOf(index), flange: 0 };
      const moved = slid?.node === node.name ? [`${loop} slides it by ${signed(slid.at)}`] : [];
      places.set(node.name, {
        ...own,
        lines: [...own.lines, lieOf(loop, node, belt.wraps[at] as number, meshes[at]), ...moved],
        colour: own.lines.length === 0 ? own.colour : "#222222",
        flange: Math.max(own.flange, node.flange),
      });
    }
  }
  const met = [...places].map(([name, { node, lines, colour, flange }]) => ({
    lines: [name, ...lines],
    colour,
    of: onSheet(node),
    clear: flange,
  }));
  const loose = Object.entries(plan.screws).filter(([name]) => !places.has(name));
  return [
    ...met,
    ...loose.map(([name, { at, screw }]) => ({
      lines: [name],
      colour: "#222222",
      of: onSheet({ x: at[0], y: at[1] }),
      clear: screw.values.diameter / 2,
    })),
  ];
}

function lieOf(loop: string, { teeth, runs = 0 }: BeltNode, wrap: number, mesh: number | undefined): string {
  const turn = `${loop} ${wrap.toFixed(1)} deg`;
  return mesh === undefined ? `${turn} on ${mm(runs)} mm smooth` : `${turn}, ${mesh.toFixed(1)} of ${teeth} teeth`;
}

const signed = (value: number) => `${value < 0 ? "-" : "+"}${Math.abs(value).toFixed(2)} mm`;

function spanLabels(loops: readonly LoopChoice[]): Label[] {
  return loops.flatMap(({ loop, belt }, index) =>
    belt.spans.map(({ from, to, length }) => ({
      lines: [`${loop} ${length.toFixed(2)}`],
      colour: colourOf(index),
      of: onSheet({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }),
      clear: 0.5,
    })),
  );
}

function barLabel({ name, outline }: { readonly name: string; readonly outline: readonly Point[] }): Label {
  const x = outline.reduce((sum, corner) => sum + corner.x, 0) / outline.length;
  const y = outline.reduce((sum, corner) => sum + corner.y, 0) / outline.length;
  const [one, other] = [outline[0] as Point, outline[2] as Point];
  const thin = Math.min(Math.abs(one.x - other.x), Math.abs(one.y - other.y));
  return { lines: [name], colour: "#666666", of: { x, y }, clear: thin / 2, upon: true };
}
