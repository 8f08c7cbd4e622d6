import type { DefectName } from "../core/defects.ts";
import type { Amount, Diagnostic, Level } from "../core/diagnostic.ts";
import { fitsBed } from "./bed.ts";
import type { Limits } from "./limits.ts";
import type { Soundness } from "./soundness.ts";

/** A part whose lowest point is within this of z = 0 stands on the bed, in mm. */
const ON_BED = 1e-3;

const CANNOT_SLICE = "a slicer has to guess where the material is, and guesses differ";
const PROGRAM = "nothing in the preset is at fault: change a length by 0.1 mm to get round it, and report it";

/** Returns the complaint about facets without three finite corners, which nothing else can be measured on. */
export function brokenMesh(broken: number): Diagnostic {
  const says = counted(broken, "facet lacks", "facets lack");
  return complaint("error", `${says} a corner or a finite coordinate`, count(broken), CANNOT_SLICE);
}

/** Returns everything that keeps a mesh from being the surface of one body that stands on the bed and fits it. */
export function meshNotSound(sound: Soundness, limits: Limits): Diagnostic[] {
  if (sound.facets === 0) return [complaint("error", "the mesh has no facets", count(0), "there is nothing to print")];
  return [...surfaceFaults(sound), ...bodyFaults(sound, limits), ...bedFaults(sound, limits)];
}

function surfaceFaults(sound: Soundness): Diagnostic[] {
  const faults: [number, string, string, string][] = [
    [sound.openEdges, "edge has", "edges have", "a facet on one side only: the surface has a gap"],
    [sound.flippedEdges, "edge has", "edges have", "neighbours that face opposite ways: a facet is inside out"],
    [sound.crowdedEdges, "edge has", "edges have", "more than two facets: one is there twice or two bodies share it"],
    [sound.pinchedCorners, "corner is", "corners are", "shared by bodies or holes that meet in a point"],
    [sound.collapsed, "facet shrinks", "facets shrink", "to a line in the single precision of the file"],
  ];
  const found = faults
    .filter(([number]) => number > 0)
    .map(([number, one, many, what]) =>
      complaint("error", `${counted(number, one, many)} ${what}`, count(number), CANNOT_SLICE),
    );
  if (sound.slivers === 0) return found;
  const says = counted(sound.slivers, "facet is a sliver below 1e-6 mm2", "facets are slivers below 1e-6 mm2");
  const why = "no effect on the print; some viewers shade them";
  return [...found, { ...complaint("note", says, count(sound.slivers), why), set: "nothing: it prints all the same" }];
}

function bodyFaults(sound: Soundness, limits: Limits): Diagnostic[] {
  if (!sound.closed || !sound.oriented) return [];
  if (sound.volume <= 0) {
    const found = { value: sound.volume, unit: "mm3" } as const;
    return [complaint("error", "the volume is not above zero: the body is inside out", found, CANNOT_SLICE)];
  }
  const pieces = limits.pieces ?? 1;
  const faults: Diagnostic[] = [];
  if (sound.pieces !== pieces) {
    const held = counted(sound.pieces, "separate piece", "separate pieces");
    const says = `the mesh holds ${held}, and ${pieces} ${pieces === 1 ? "was" : "were"} expected`;
    const why = "what is not joined to the part falls off it";
    const set = "sizes or offsets that let the features of the part overlap";
    faults.push({ ...complaint("error", says, count(sound.pieces), why), limit: count(pieces), set });
  }
  if (sound.voids > 0) {
    const says = `${counted(sound.voids, "hollow inside the part has", "hollows inside the part have")} no way out`;
    const why = "nothing can be put into them, and a wall round one is thinner than it looks";
    const set = "a smaller pocket, or a wall that the pocket does not leave closed";
    faults.push({ ...complaint("warning", says, count(sound.voids), why), set });
  }
  return faults;
}

function bedFaults({ box, facets }: Soundness, { bed }: Limits): Diagnostic[] {
  const faults: Diagnostic[] = [];
  const lowest = box.min[2];
  if (facets > 0 && Math.abs(lowest) > ON_BED) {
    const says = `the lowest point is ${Math.abs(lowest).toFixed(3)} mm ${lowest > 0 ? "above" : "below"} the bed`;
    const why = "the first layer would be laid on air or into the bed";
    faults.push(complaint("error", says, { value: lowest, unit: "mm" }, why));
  }
  if (fitsBed(box, bed)) return faults;
  const size = [0, 1, 2].map((axis) => (box.max[axis as 0] as number) - (box.min[axis as 0] as number));
  const taken = size.map((side) => side.toFixed(1)).join(" x ");
  const [found, limit] = tooLong(size, bed);
  const says = `the part takes ${taken} mm of a bed of ${bed.x} x ${bed.y} x ${bed.z}`;
  faults.push({
    ...complaint("error", says, { value: found, unit: "mm" }, "the printer cannot reach all of it"),
    limit: { value: limit, unit: "mm" },
    set: "a smaller part, or the printer profile of a larger bed",
  });
  return faults;
}

/** Returns the side that does not fit, and what there is for it: the height, else the longer side, else the shorter. */
function tooLong([x = 0, y = 0, z = 0]: readonly number[], bed: Limits["bed"]): [number, number] {
  if (z > bed.z) return [z, bed.z];
  const [long, room] = [Math.max(x, y), Math.max(bed.x, bed.y)];
  return long > room ? [long, room] : [Math.min(x, y), Math.min(bed.x, bed.y)];
}

function complaint(level: Level, says: string, found: Amount, why: string): Diagnostic {
  return {
    name: "mesh-not-sound" satisfies DefectName,
    level,
    path: [],
    says,
    found,
    limit: count(0),
    why,
    set: PROGRAM,
  };
}

/** Returns the number with the words that go with it. */
function counted(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
}

function count(value: number): Amount {
  return { value, unit: "" };
}
