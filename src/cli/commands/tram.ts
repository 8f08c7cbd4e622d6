import { isRefusal, type Refusal } from "../../core/calculation.ts";
import { nearest } from "../../core/nearest.ts";
import { readQuantity } from "../../core/quantity.ts";
import { type TramMove, tramMoves } from "../../mechanics/tram-moves.ts";
import { type Probe, tramPlane } from "../../mechanics/tram-plane.ts";
import { type TramTwist, tramTwist } from "../../mechanics/tram-twist.ts";
import type { Plan } from "../../stage/index.ts";
import { hanging } from "../explain/hanging.ts";
import { shown } from "../explain/shown.ts";
import { EXIT, type Io, trouble } from "../io.ts";
import type { Machine } from "../load-stage.ts";
import { type Mount, mountsOf } from "../tram-mounts.ts";

interface TramArgs {
  /** `x,y,height` as typed. */
  readonly probes: readonly string[];
  /** `mount=length` as typed: how long the spring of a mount is now. */
  readonly springs?: readonly string[];
  readonly json: boolean;
}

/** Less than this is as good as level, mm. A rule of this project. */
const LEVEL = 0.01;

/** Tells what each mount of the plate must do to bring it level. Returns the exit code. */
export function tram(machine: Machine, { probes, springs = [], json }: TramArgs, io: Io): number {
  const { plan } = machine.preset;
  const read = probes.map((probe) => readProbe(probe, plan));
  const plane = tramPlane(read);
  if (isRefusal(plane)) throw trouble(`${plane.refused}; probe at least three places, spread over the plate both ways`);
  const mounts = mountsOf(machine, springsOf(springs, plan));
  const fixed = mounts.filter(({ type }) => type === "fixed");
  const [still] = fixed;
  if (still === undefined || fixed.length > 1)
    throw trouble("tramming starts from the fixed mount: the plan needs one mount of type: fixed, and one only");
  const moves = tramMoves(plane, mounts, still.name);
  if (isRefusal(moves))
    throw trouble(`${moves.refused}; put that much under its bracket, or bring the stage itself nearer to level`);
  const told = moves.map(({ name, move, clockwise }) => {
    const { seenFrom, turned, marks, spring, measured, up, down } = mounts.find((one) => one.name === name) ?? still;
    return { mount: name, move, clockwise, seenFrom, turned, marks, spring, measured, left: { up, down } };
  });
  const twist = tramTwist(read, mounts);
  if (json) io.out(JSON.stringify({ plane, moves: told, twist: isRefusal(twist) ? null : twist }, undefined, 2));
  const lines = json
    ? []
    : [
        ...moves.flatMap((move) => moveLines(move, mounts)),
        ...shared(moves, still),
        ...leftOver(plane.worst, mounts, twist),
        ...assumed(moves, mounts),
      ];
  for (const line of lines) io.out(line);
  return EXIT.done;
}

/** Why the fixed mount does not stay. */
function shared(moves: readonly TramMove[], { name }: Mount): string[] {
  const move = moves.find((one) => one.name === name)?.move ?? 0;
  if (move === 0) return [];
  const by = `${shown(Math.abs(move), "mm")} mm ${move < 0 ? "lower" : "higher"}`;
  return hanging(
    "",
    `shared out, since one mount alone would leave its travel: the plate comes to lie ${by} at ${name}`,
  );
}

/** Which travel was not measured, of the mounts that move. */
function assumed(moves: readonly TramMove[], mounts: readonly Mount[]): string[] {
  const moved = moves.filter(({ move }) => Math.abs(move) >= LEVEL).map(({ name }) => name);
  const taken = mounts.filter(({ name, measured }) => moved.includes(name) && !measured);
  if (taken.length === 0) return [];
  const each = taken.map(({ name, spring, up }) => `${name} ${spring.toFixed(2)} mm, ${up.toFixed(2)} mm to each side`);
  const words = `travel left as if the springs were as long as set: ${each.join("; ")}`;
  return hanging("", `${words}; --spring ${taken[0]?.name}=<length> counts from what it is now`);
}

function moveLines({ name, move, clockwise }: TramMove, mounts: readonly Mount[]) {
  const mount = mounts.find((one) => one.name === name);
  if (mount?.type === "fixed" && move === 0)
    return hanging("", `mount ${name}: stays, the plate is brought level with it`);
  if (mount === undefined || Math.abs(move) < LEVEL) return hanging("", `mount ${name}: stays, it is level`);
  const turns = Math.abs(clockwise);
  const marks = mount.marks === 0 ? "" : ` (${(turns * mount.marks).toFixed(1)} marks)`;
  const words = [
    `${move < 0 ? "lower" : "raise"} ${Math.abs(move).toFixed(2)} mm = ${turns.toFixed(2)} turn${marks}`,
    `${clockwise > 0 ? "clockwise" : "counter-clockwise"} seen from ${mount.seenFrom}`,
  ];
  return hanging(`mount ${name}: `, words.join(", "));
}

/** What the mounts cannot take out: the plate's own bend, or a twist where four mounts hold it. */
function leftOver(worst: number, mounts: readonly Mount[], twist: TramTwist | Refusal): string[] {
  const lines =
    worst < LEVEL ? [] : hanging("", `the probes lie up to ${shown(worst, "mm")} mm off a plane: that stays`);
  if (mounts.length < 4) return lines;
  return [
    ...lines,
    ...(mounts.length === 4 ? hanging("", twistWords(mounts, twist)) : []),
    ...hanging("", "more than three mounts can twist the plate: turn those beyond three until they just bear"),
  ];
}

/** Four points do not lie in a plane: two across from one another stand over the nearest one, the others under it. */
function twistWords(mounts: readonly Mount[], twist: TramTwist | Refusal): string {
  if (isRefusal(twist)) return `the twist over the four mounts is not known: ${twist.refused}`;
  if (twist.worst < LEVEL) return `the four mounts lie in a plane within ${LEVEL} mm: no twist`;
  const named = (sign: number) =>
    mounts.flatMap(({ name }, index) => (Math.sign(twist.off[index] ?? 0) === sign ? [name] : [])).join(" and ");
  const by = `${shown(twist.worst, "mm")} mm`;
  return `twist: ${named(1)} ${by} over the plane nearest to all four mounts, ${named(-1)} as much under it: that stays`;
}

/** Reads `mount=length`; a bare number is in the plan's unit. */
function springsOf(typed: readonly string[], { units, plate: { mounts } }: Plan): Record<string, number> {
  return Object.fromEntries(
    typed.map((text) => {
      const [name = "", length = "", ...more] = text.split("=");
      if (more.length > 0 || length === "") throw trouble(`--spring ${text}: write mount=length such as two=14.5`);
      if (!Object.hasOwn(mounts, name)) {
        const set = nearest(name, Object.keys(mounts)) ?? `one of ${Object.keys(mounts).join(", ")}`;
        throw trouble(`--spring ${text}: the plate has no mount ${name}; the nearest is ${set}`);
      }
      return [name, readLength(length, units, `--spring ${text}`)];
    }),
  );
}

/** Reads `x,y,height`; bare numbers are in the plan's unit. */
function readProbe(text: string, { units, plate }: Plan): Probe {
  const cells = text.split(",");
  const wanted = "write x,y,height such as 120,80,-0.15";
  const numbers = cells.map((cell) => readLength(cell, units, `--probe ${text}`, wanted));
  const [x, y, height] = numbers;
  if (numbers.length !== 3 || x === undefined || y === undefined || height === undefined)
    throw trouble(`--probe ${text} has ${cells.length} numbers and needs three: x,y,height`);
  if ([x, y].some((value, axis) => Math.abs(value - (plate.at[axis] ?? 0)) > (plate.size[axis] ?? 0) / 2 + EDGE))
    throw trouble(`--probe ${text} lies off the plate: ${reachOf(plate, units)}, counted like at: in the plan`);
  return { x, y, height };
}

/** A probe at the edge is still on the plate, mm. */
const EDGE = 1;

function reachOf({ at, size }: Plan["plate"], units: Plan["units"]): string {
  const shown = (value: number) => Number((units === "in" ? value / 25.4 : value).toFixed(2));
  const [x, y] = [0, 1].map((axis) => {
    const [middle, half] = [at[axis as 0 | 1], size[axis as 0 | 1] / 2];
    return `from ${shown(middle - half)} to ${shown(middle + half)} ${units}`;
  });
  return `x goes ${x}, y ${y}`;
}

function readLength(
  text: string,
  units: Plan["units"],
  option: string,
  wanted = "write a length such as 14.5",
): number {
  const bare = /^\s*[+-]?[\d.]+(?:[eE][+-]?\d+)?\s*$/.test(text);
  const reading = readQuantity(bare ? `${text.trim()} ${units}` : text, "length");
  if ("wrong" in reading) throw trouble(`${option}: ${reading.wrong}; ${wanted}`);
  return reading.value;
}
