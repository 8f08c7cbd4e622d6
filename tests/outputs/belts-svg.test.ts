import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { beltsSvg } from "../../src/outputs/belts-svg.ts";
import { readYaml } from "../../src/presets/read.ts";
import { readStagePreset } from "../../src/presets/stage-preset.ts";
import type { Plan } from "../../src/stage/index.ts";
import { layout, solved } from "../support/belt-plans.ts";
import { stackedPulleys } from "../support/motor-stack.ts";
import { widePlan } from "../support/plans.ts";

const drawn = (plan: Plan) => ({ plan, pulleys: stackedPulleys(plan), loops: solved(plan).loops });
const CROWDED = layout({
  motorTeeth: 20,
  screws: { "front-left": [60, 40, 36], "front-right": [-70, 45, 36], back: [10, -60, 40] },
  idlers: {
    left: { at: [-24, 24], idler: "two F625", side: "outside" },
    right: { at: [25, 20], idler: "two F625", side: "outside" },
  },
});
const PLANS = { wide: widePlan(), crowded: CROWDED };
const names = Object.keys(PLANS) as (keyof typeof PLANS)[];

/** The attributes of every element of a name. */
function elements(svg: string, name: string): Readonly<Record<string, string>>[] {
  return [...svg.matchAll(new RegExp(`<${name}((?: [\\w-]+="[^"]*")*)`, "g"))].map(([, attributes = ""]) =>
    Object.fromEntries([...attributes.matchAll(/ ([\w-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value])),
  );
}

/** Length of a path of arcs and lines, mm: each arc by its chord and radius. */
function lengthOf(path: string): number {
  const words = path.split(" ");
  let [x, y, length] = [Number(words[1]), Number(words[2]), 0];
  for (let at = 3; words[at] !== "Z"; ) {
    const arc = words[at] === "A";
    const [toX, toY] = words.slice(arc ? at + 6 : at + 1, arc ? at + 8 : at + 3).map(Number) as [number, number];
    const chord = Math.hypot(toX - x, toY - y);
    const radius = Number(words[at + 1]);
    const small = 2 * radius * Math.asin(Math.min(1, chord / (2 * radius)));
    length += arc ? (words[at + 4] === "1" ? 2 * Math.PI * radius - small : small) : chord;
    [x, y] = [toX, toY];
    at += arc ? 8 : 3;
  }
  return length;
}

describe.each(names)("the belts of the %s machine", (name) => {
  const data = drawn(PLANS[name]);
  const svg = beltsSvg(data, name);

  test("are true to scale: the sheet is as many mm as units, and each belt as long as its loop", () => {
    const [sheet] = elements(svg, "svg");
    const [, , width, height] = sheet?.viewBox?.split(" ") ?? [];
    expect([sheet?.width, sheet?.height]).toEqual([`${width}mm`, `${height}mm`]);
    const belts = elements(svg, "path").filter((path) => path.class === "belt");
    expect(belts).toHaveLength(data.loops.length);
    for (const [index, { d = "" }] of belts.entries()) {
      // An arc of half a turn follows from its chord only to some tenths.
      expect(Math.abs(lengthOf(d) - (data.loops[index]?.belt.length ?? 0))).toBeLessThan(0.3);
    }
  });

  test("stand where the machine has them, y up", () => {
    const circles = elements(svg, "circle");
    for (const { nodes } of data.loops) {
      for (const { x, y, flange } of nodes) {
        const here = circles.filter(
          (one) => Math.hypot(Number(one.cx) - x, Number(one.cy) + y) < 0.01 && Math.abs(Number(one.r) - flange) < 0.01,
        );
        expect(here.length).toBeGreaterThan(0);
      }
    }
  });

  test("have every span, wrap and plane beside them", () => {
    for (const { loop, belt, nodes } of data.loops) {
      for (const { length } of belt.spans) expect(svg).toContain(`>${loop} ${length.toFixed(2)}<`);
      for (const [index, wrap] of belt.wraps.entries()) {
        expect(svg).toContain(`>${nodes[index]?.name}<`);
        expect(svg).toContain(`${loop} ${wrap.toFixed(1)} deg`);
      }
      const plane = data.pulleys.find((pulley) => pulley.loop === loop)?.plane ?? Number.NaN;
      expect(svg).toContain(`plane of ${loop} at ${Number(plane.toFixed(3))}`);
    }
  });

  test("have no label on another, and all of them on the sheet", () => {
    const boxes = textBoxes(svg);
    expect(boxes.length).toBeGreaterThan(10);
    const [sheet] = elements(svg, "svg");
    const [, , width = 0, height = 0] = (sheet?.viewBox ?? "").split(" ").map(Number);
    for (const [index, box] of boxes.entries()) {
      expect(box.words && box.left >= 0 && box.right <= width && box.top >= 0 && box.bottom <= height).toBe(true);
      const hit = boxes
        .slice(index + 1)
        .filter((other) => box.left < other.right && other.left < box.right)
        .find((other) => box.top < other.bottom && other.top < box.bottom);
      expect(hit === undefined ? "" : `${box.words} on ${hit.words}`).toBe("");
    }
  });

  test("are the same bytes again", () => {
    expect(beltsSvg(drawn(PLANS[name]), name)).toBe(svg);
  });

  test("are an XML tree without fonts, scripts or links", () => {
    const open: string[] = [];
    for (const [, close, tag = "", , single] of svg.matchAll(/<(\/?)([a-z]+)((?: [\w:-]+="[^"<>]*")*)(\/?)>/g)) {
      if (close) expect(open.pop()).toBe(tag);
      else if (!single) open.push(tag);
    }
    expect(open).toEqual([]);
    expect(svg).not.toMatch(/NaN|undefined|Infinity|@font-face|<script|href|="-0"/);
  });
});

/** The boxes of all texts on the sheet, letters taken as half as wide again as a narrow face has them. */
function textBoxes(svg: string) {
  const boxes: { words: string; left: number; right: number; top: number; bottom: number }[] = [];
  let [x, y] = [0, 0];
  for (const line of svg.split("\n")) {
    const shift = /<g transform="translate\((\S+) (\S+)\)"/.exec(line);
    if (shift) [x, y] = [Number(shift[1]), Number(shift[2])];
    if (line === "</g>") [x, y] = [0, 0];
    const [text] = elements(line, "text");
    if (text === undefined) continue;
    const words = />([^<]*)</.exec(line)?.[1] ?? "";
    const [size, left] = [Number(text["font-size"]), x + Number(text.x)];
    const width = words.length * size * 0.55;
    const start = text["text-anchor"] === "middle" ? left - width / 2 : left;
    const foot = y + Number(text.y);
    boxes.push({ words, left: start, right: start + width, top: foot - 0.75 * size, bottom: foot + 0.2 * size });
  }
  return boxes;
}

test("no words stand within a pulley: on a machine whose side arms pass close by its screws", () => {
  const file = "presets/stages/copy-stand.yaml";
  const plan = readStagePreset(readYaml(file, readFileSync(file, "utf8"))).value?.plan;
  if (plan === undefined) throw new Error("unreadable");
  const data = drawn(plan);
  const svg = beltsSvg(data, "copy-stand");
  const [, right = "", down = ""] = /translate\((\S+) (\S+)\)/.exec(svg) ?? [];
  const nodes = data.loops.flatMap((loop) => loop.nodes);
  expect(nodes.length).toBe(5);
  for (const { words, left, right: end, top, bottom } of textBoxes(svg)) {
    const [x, y] = [(left + end) / 2 - Number(right), (top + bottom) / 2 - Number(down)];
    const over = nodes.find((node) => Math.hypot(x - node.x, y + node.y) < node.flange);
    expect(over === undefined ? "" : `${words} on ${over.name}`).toBe("");
  }
});

test("a title is escaped, and what XML forbids is left out", () => {
  const svg = beltsSvg(drawn(PLANS.wide), `a <b> & "c"\u0000 'd'`);
  expect(svg).toContain("<title>a &lt;b&gt; &amp; &quot;c&quot; &apos;d&apos;: belts");
  expect(svg).not.toContain("\u0000");
});

test("a machine without a sound loop is drawn without belts", () => {
  const plan = layout({ screws: { A: [10, 0, 40] } });
  const svg = beltsSvg(drawn(plan), "none");
  expect(elements(svg, "path")).toEqual([]);
  expect(svg).not.toMatch(/NaN|Infinity/);
});
