import { defect } from "../core/defects.ts";
import type { Path } from "../core/diagnostic.ts";
import { FORMAT } from "./preset-file.ts";
import { TOP, type YamlFile } from "./read.ts";

/** A parameter of a family that was called otherwise. */
export interface Rename {
  readonly part: string;
  readonly from: string;
  readonly to: string;
  /** What its value has become; the same where nothing is said. */
  readonly value?: (old: unknown) => unknown;
}

/** What a format called otherwise than the next one. */
export interface Step {
  readonly from: number;
  readonly renames: readonly Rename[];
}

const wheelPlate = (from: string, to: string) => ({ part: "wheel-plate", from, to });

/** Every step from a format to the next, in order. Format 0 was in use before the first release. */
export const STEPS: readonly Step[] = [
  {
    from: 0,
    renames: [
      wheelPlate("wheelCount", "wheels"),
      wheelPlate("leftWheels", "left"),
      wheelPlate("rightWheels", "right"),
      wheelPlate("eccentricMade", "eccentricKind"),
      wheelPlate("armBar", "arm"),
      wheelPlate("armX", "armBoltAt"),
      wheelPlate("overhangAlongAxles", "offset"),
      { ...wheelPlate("style", "sandwich"), value: (style) => style === "sandwich" },
    ],
  },
];

type Data = Readonly<Record<string, unknown>>;

/**
 * Returns a file of an older format as one of this format would read, step by step. What is told of a key later stands
 * at the line where its old name is. A file of this format, a newer one or none is returned as it is.
 */
export function inCurrentFormat(file: YamlFile): YamlFile {
  const written = (file.data as Data | null | undefined)?.format;
  if (!Number.isInteger(written) || Number(written) >= FORMAT || Number(written) < 0) return file;
  const steps = STEPS.filter(({ from }) => from >= Number(written));
  const renames = renamesOf(file.data as Data);
  const data = { ...steps.reduce((older, step) => stepped(step, older), file.data as Data), format: FORMAT };
  const place = (path: Path) => file.place([...renames].reverse().reduce(olderPath, path));
  const called = renames.map(({ from, to }) => `${from} is now ${to}`).join(", ");
  const says = `format ${written} is read as format ${FORMAT}${called === "" ? "" : `: ${called}`}`;
  const set = `format: ${FORMAT}${called === "" ? "" : ", with the keys as they are called now"}`;
  const diagnostic = defect("preset-of-older-format", { level: "note", path: ["format"], says, set });
  const note = { file: file.name, place: file.place(["format"]) ?? TOP, diagnostic };
  return { ...file, data, place, notes: [note] };
}

/** Returns everything that is called otherwise in the format of today, of what a file of its own format holds. */
export function renamesOf(data: Readonly<Record<string, unknown>>): Rename[] {
  return STEPS.filter(({ from }) => from >= Number(data.format)).flatMap((step) => renamesIn(step, data));
}

/** Returns the renames of a step that concern this file: the old name is there, the new one is not. */
function renamesIn({ renames }: Step, { part, parameters }: Data): Rename[] {
  if (typeof parameters !== "object" || parameters === null) return [];
  return renames.filter((one) => one.part === part && one.from in parameters && !(one.to in parameters));
}

/** Returns the data of a file in the next format, its keys in the order in which they were. */
export function stepped(step: Step, data: Data): Data {
  const renames = renamesIn(step, data);
  if (renames.length === 0) return data;
  const parameters = Object.entries(data.parameters as Data).map(([key, value]) => {
    const rename = renames.find(({ from }) => from === key);
    return rename === undefined ? [key, value] : [rename.to, rename.value?.(value) ?? value];
  });
  return { ...data, parameters: Object.fromEntries(parameters) };
}

function olderPath(path: Path, { from, to }: Rename): Path {
  const [first, key, ...rest] = path;
  return first === "parameters" && key === to ? [first, from, ...rest] : path;
}
