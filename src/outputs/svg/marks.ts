/** A place on the sheet or in plan, mm. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A straight piece between two places, mm. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

/** Width of a letter over its height, on the safe side for the usual sans-serif faces. */
const LETTER = 0.62;
/** Height of a line of text over that of its letters. */
const LINE = 1.25;

/** A number as a drawing has it: at most three decimals, never -0. mm. */
export function mm(value: number): string {
  const rounded = Math.round(value * 1000) / 1000;
  return String(rounded === 0 ? 0 : rounded);
}

const NAMED: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&apos;",
};

/** Returns text that may stand in XML, as content and in quotation marks; what XML forbids is left out. */
export function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "")
    .replace(/[&<>"']/g, (letter) => NAMED[letter] ?? letter);
}

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Returns an element without content; numbers are lengths in mm. */
export function mark(name: string, attributes: Attributes): string {
  return `<${name}${attributesOf(attributes)}/>`;
}

/** Returns an element round others. */
export function group(attributes: Attributes, content: readonly string[]): string {
  return `<g${attributesOf(attributes)}>\n${content.join("\n")}\n</g>`;
}

function attributesOf(attributes: Attributes): string {
  return Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? mm(value) : escaped(String(value))}"`)
    .join("");
}

export const line = (from: Point, to: Point, attributes: Attributes = {}) =>
  mark("line", { x1: from.x, y1: from.y, x2: to.x, y2: to.y, ...attributes });

export const circle = ({ x, y }: Point, radius: number, attributes: Attributes = {}) =>
  mark("circle", { cx: x, cy: y, r: radius, ...attributes });

export const polygon = (corners: readonly Point[], attributes: Attributes = {}) =>
  mark("polygon", { points: corners.map(({ x, y }) => `${mm(x)},${mm(y)}`).join(" "), ...attributes });

export const rectangle = ({ left, top, right, bottom }: Box, attributes: Attributes = {}) =>
  mark("rect", { x: left, y: top, width: right - left, height: bottom - top, ...attributes });

/** A box on the sheet, y downwards, mm. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Returns the box that lines of text take with their middle at a place. */
export function boxOfText(lines: readonly string[], size: number, { x, y }: Point): Box {
  const half = (Math.max(...lines.map((text) => [...text].length)) * LETTER * size) / 2;
  const high = (lines.length * LINE * size) / 2;
  return { left: x - half, top: y - high, right: x + half, bottom: y + high };
}

/** Returns lines of text in a box made by `boxOfText`; the first of several stands out. */
export function textIn(box: Box, lines: readonly string[], size: number, attributes: Attributes = {}): string {
  const x = (box.left + box.right) / 2;
  return lines
    .map((words, index) => {
      const y = box.top + (index + 0.5) * LINE * size + 0.35 * size;
      const weight = lines.length > 1 && index === 0 ? "bold" : undefined;
      const place = { x, y, "font-size": size, "text-anchor": "middle", "font-weight": weight, ...attributes };
      return `<text${attributesOf(place)}>${escaped(words)}</text>`;
    })
    .join("\n");
}

/** Returns a line of text that starts at a place on its foot line. */
export function textAt({ x, y }: Point, words: string, size: number, attributes: Attributes = {}): string {
  return `<text${attributesOf({ x, y, "font-size": size, ...attributes })}>${escaped(words)}</text>`;
}

export function widthOfText(words: string, size: number): number {
  return [...words].length * LETTER * size;
}

export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
