import { isRefusal } from "../../core/calculation.ts";
import { readQuantity } from "../../core/quantity.ts";
import { type TramMove, tramMoves } from "../../mechanics/tram-moves.ts";
import { type Probe, tramPlane } from "../../mechanics/tram-plane.ts";
import type { Plan } from "../../stage/index.ts";
import { hanging } from "../explain/hanging.ts";
import { shown } from "../explain/shown.ts";
import { EXIT, type Io, trouble } from "../io.ts";
import type { Machine } from "../load-stage.ts";
import { type Mount, mountsOf } from "../tram-mounts.ts";

interface TramArgs {
  /** `x,y,height` as typed. */
  readonly probes: readonly string[];
  readonly json: boolean;
}

/** Less than this is as good as level, mm. A rule of this project. */
const LEVEL = 0.01;

/** Tells what each mount of the plate must do to bring it level. Returns the exit code. */
export function tram(machine: Machine, { probes, json }: TramArgs, io: Io): number {
  const { plan } = machine.preset;
  const plane = tramPlane(probes.map((probe) => readProbe(probe, plan)));
  if (isRefusal(plane)) throw trouble(`${plane.refused}; probe at least three places, spread over the plate both ways`);
  const mounts = mountsOf(machine);
  const fixed = mounts.filter(({ type }) => type === "fixed");
  const [still] = fixed;
  if (still === undefined || fixed.length > 1)
    throw trouble("tramming leaves the fixed mount alone: the plan needs one mount of type: fixed, and one only");
  const moves = tramMoves(plane, mounts, still.name);
  if (isRefusal(moves)) throw trouble(`${moves.refused}; shim the mount, or bring the stage itself nearer to level`);
  const told = moves.map(({ name, move, clockwise }) => {
    const { seenFrom, turned, marks } = mounts.find((one) => one.name === name) ?? still;
    return { mount: name, move, clockwise, seenFrom, turned, marks };
  });
  if (json) io.out(JSON.stringify({ plane, moves: told }, undefined, 2));
  else for (const line of moves.flatMap((move) => moveLines(move, mounts))) io.out(line);
  if (!json) for (const line of leftOver(plane.worst, mounts)) io.out(line);
  return EXIT.done;
}

function moveLines({ name, move, clockwise }: TramMove, mounts: readonly Mount[]) {
  const mount = mounts.find((one) => one.name === name);
  if (mount?.type === "fixed") return hanging("", `mount ${name}: stays, the plate is brought level with it`);
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
function leftOver(worst: number, mounts: readonly Mount[]): string[] {
  const lines =
    worst < LEVEL ? [] : hanging("", `the probes lie up to ${shown(worst, "mm")} mm off a plane: that stays`);
  if (mounts.length < 4) return lines;
  return [
    ...lines,
    ...hanging("", "more than three mounts can twist the plate: turn those beyond three until they just bear"),
  ];
}

/** Reads `x,y,height`; bare numbers are in the plan's unit. */
function readProbe(text: string, { units }: Plan): Probe {
  const cells = text.split(",");
  const numbers = cells.map((cell) => {
    const bare = /^\s*[+-]?[\d.]+(?:[eE][+-]?\d+)?\s*$/.test(cell);
    const reading = readQuantity(bare ? `${cell.trim()} ${units}` : cell, "length");
    if ("wrong" in reading) throw trouble(`--probe ${text}: ${reading.wrong}; write x,y,height such as 120,80,-0.15`);
    return reading.value;
  });
  const [x, y, height] = numbers;
  if (numbers.length !== 3 || x === undefined || y === undefined || height === undefined)
    throw trouble(`--probe ${text} has ${cells.length} numbers and needs three: x,y,height`);
  return { x, y, height };
}
