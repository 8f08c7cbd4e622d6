import type { BeltGap, LoopChoice } from "../stage/machine.ts";
import { elevationView } from "./belts-elevation.ts";
import { COLOURS, type Drawn, planView, type View } from "./belts-plan.ts";
import { type PlacedLabel, placeLabels } from "./svg/labels.ts";
import { type Box, escaped, group, line, mm, type Point, textAt, textIn, widthOfText } from "./svg/marks.ts";

/** Height of the letters: this share of the larger side of the plan, and never less than this many mm. */
const LETTERS = { share: 1 / 110, least: 2.8 };
const ABOUT =
  "belts, true to scale in mm; lengths along the pitch line, and the angle over which a belt lies on each pulley";
/** Length of the line that shows the scale of a print, mm. */
const SCALE = 100;

const STYLE = [
  "text{font-family:sans-serif;paint-order:stroke;stroke:#ffffff;stroke-width:0.6;stroke-linejoin:round}",
  ".bar{fill:#eeeeee;stroke:#999999;stroke-width:0.4}",
  ".moves{fill:none;stroke-dasharray:6 3}",
  ".motor{fill:none;stroke:#555555;stroke-width:0.5}",
  ".screw{fill:#ffffff;stroke:#333333;stroke-width:0.4}",
  ".axis{stroke:#777777;stroke-width:0.2}",
  ".flange{fill:none;stroke-width:0.4}",
  ".pitch{fill:none;stroke-width:0.25;stroke-dasharray:2 1}",
  ".belt{fill:none;stroke-width:1.4;stroke-linejoin:round}",
  ".strip{fill-opacity:0.55}",
  ".leader{stroke:#777777;stroke-width:0.25}",
  ".gap{stroke:#222222;stroke-width:0.5}",
].join("");

/**
 * Returns plan and elevation of the belts of a machine as one SVG, true to scale: a millimetre of the drawing is one of
 * the machine. Bars, screws, pulleys, idlers, motor; spans with their lengths, wraps, planes and the gaps between them.
 * The same machine gives the same bytes.
 */
export function beltsSvg(drawn: Drawn, title: string): string {
  const plan = planView(drawn);
  const [first, last] = extentOf(plan.corners);
  const side = Math.max(last.x - first.x, last.y - first.y);
  const size = Math.max(LETTERS.least, Math.round(side * LETTERS.share * 10) / 10);
  const labels = placeLabels(plan.labels, plan.lines, [], size);
  const elevation = elevationView(drawn, first.x, last.x, size);
  const box = boxRound([plan, elevation], labels, size);
  const rows = drawn.loops.flatMap((loop, index) => loopRows(drawn, loop, index));
  return sheet({ title: `${title}: ${ABOUT}`, plan, labels, elevation, rows, size, box });
}

interface Sheet {
  readonly title: string;
  readonly plan: View;
  readonly labels: readonly PlacedLabel[];
  readonly elevation: ReturnType<typeof elevationView>;
  readonly rows: readonly Row[];
  readonly size: number;
  readonly box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
}

interface Row {
  readonly words: string;
  readonly colour?: string;
  /** A line that belongs to the one before it. */
  readonly inset?: boolean;
}

function sheet({ title, plan, labels, elevation, rows, size, box }: Sheet): string {
  const step = size * 1.6;
  const head = step * 3.5;
  const planTop = head - box.top;
  const elevationTop = planTop + box.bottom + step * 2;
  const rowsTop = elevationTop + elevation.height + step * 2;
  const scaleTop = rowsTop + rows.length * step + step;
  const longest =
    Math.max(...[title, ...rows.map(({ words }) => words)].map((words) => widthOfText(words, size)), SCALE) + 2 * size;
  const width = Math.max(box.right - box.left, longest) + 2 * size;
  const height = scaleTop + step;
  const bottomOfElevation = Math.min(...elevation.corners.map(({ y }) => y));
  const shift = size - box.left;
  return [
    `<?xml version="1.0" encoding="UTF-8"?>`,
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}">`,
    `<title>${escaped(title)}</title>`,
    `<style>${STYLE}</style>`,
    `<rect width="100%" height="100%" fill="#ffffff"/>`,
    textAt({ x: size, y: step }, title, size, { "font-weight": "bold" }),
    textAt({ x: size, y: step * 2.5 }, "from above, y up", size, { "font-weight": "bold" }),
    group({ transform: moved(shift, planTop) }, [...plan.marks, ...labels.map((label) => labelMark(label, size))]),
    textAt({ x: size, y: elevationTop - size * 0.6 }, "from the front, z up", size, { "font-weight": "bold" }),
    group({ transform: moved(shift, elevationTop - bottomOfElevation) }, elevation.marks),
    ...rows.map(({ words, colour, inset = false }, index) =>
      textAt(
        { x: inset ? size * 3 : size, y: rowsTop + index * step },
        words,
        size,
        colour === undefined ? {} : { fill: colour },
      ),
    ),
    ...scaleBar(size, scaleTop),
    "</svg>",
    "",
  ].join("\n");
}

const moved = (x: number, y: number) => `translate(${mm(x)} ${mm(y)})`;

/** A label, and a line to the edge of what it tells of where it stands off. */
function labelMark({ box, lines, colour, of, clear }: PlacedLabel, size: number): string {
  const near = {
    x: Math.min(box.right, Math.max(box.left, of.x)),
    y: Math.min(box.bottom, Math.max(box.top, of.y)),
  };
  const text = textIn(box, lines, size, { fill: colour });
  const away = Math.hypot(near.x - of.x, near.y - of.y);
  if (away <= clear + size) return text;
  const share = clear / away;
  const edge = { x: of.x + share * (near.x - of.x), y: of.y + share * (near.y - of.y) };
  return `${line(near, edge, { class: "leader" })}\n${text}`;
}

function scaleBar(x: number, y: number): string[] {
  const end = x + SCALE;
  const ticks = [x, end].map((at) => line({ x: at, y: y - 2 }, { x: at, y: y + 2 }, { class: "gap" }));
  const words = `${SCALE} mm: measure it on the print`;
  return [line({ x, y }, { x: end, y }, { class: "gap" }), ...ticks, textAt({ x: end + 3, y: y + 1 }, words, x)];
}

function extentOf(points: readonly Point[]): readonly [Point, Point] {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return [
    { x: Math.min(...xs), y: Math.min(...ys) },
    { x: Math.max(...xs), y: Math.max(...ys) },
  ];
}

/** What plan, labels and the width of the elevation take. */
function boxRound([plan, elevation]: readonly [View, View], labels: readonly PlacedLabel[], size: number): Box {
  const boxes = labels.flatMap(({ box }) => [
    { x: box.left, y: box.top },
    { x: box.right, y: box.bottom },
  ]);
  const [first, last] = extentOf([...plan.corners, ...boxes]);
  const [side, far] = extentOf(elevation.corners);
  return {
    left: Math.min(first.x, side.x) - size,
    right: Math.max(last.x, far.x) + size,
    top: first.y - size,
    bottom: last.y + size,
  };
}

function loopRows(
  { plan, pulleys }: Drawn,
  { loop, nodes, bought, nominal, gaps, slid }: LoopChoice,
  index: number,
): Row[] {
  const given = plan.loops[loop];
  if (given === undefined) return [];
  const { belt, width, tension } = given;
  const teeth = (length: number) => Math.round(length / belt.values.pitch);
  const length =
    bought === undefined ? `no stock loop for ${nominal.toFixed(2)} mm` : `${mm(bought)} mm, ${teeth(bought)} teeth`;
  const plane = pulleys.find((pulley) => pulley.loop === loop)?.plane;
  const colour = COLOURS[index % COLOURS.length] as string;
  const slide = slid === undefined ? "" : `; ${slid.node} slides by ${mm(slid.at)} mm`;
  const height = plane === undefined ? "" : `; plane at ${mm(plane)} mm`;
  const first = `${loop}: ${belt.key}, ${mm(width)} mm wide, ${length}${height}; ${mm(tension)} N${slide}`;
  const order = `round ${nodes.map(({ name, inside }) => (inside ? name : `${name} (outside)`)).join(", ")}`;
  return [{ words: first, colour }, ...[order, ...narrowest(gaps)].map((words) => ({ words, inset: true }))];
}

/** The narrowest gap of each kind, in words. */
function narrowest(gaps: readonly BeltGap[]): string[] {
  const kinds = [...new Set(gaps.map(({ defect }) => defect))];
  return kinds.flatMap((kind) => {
    const gap = gaps.find(({ defect }) => defect === kind);
    return gap === undefined ? [] : [`${gap.gap.toFixed(2)} mm between ${gap.between.join(" and ")}`];
  });
}
