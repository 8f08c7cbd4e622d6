import type { TramMount } from "../mechanics/tram-moves.ts";
import type { Design } from "../parts/family.ts";
import { FAMILIES } from "../parts/index.ts";
import type { Printer } from "../printing/printer.ts";
import { UNCALIBRATED } from "../printing/printer.ts";
import { trouble } from "./io.ts";
import type { Machine } from "./load-stage.ts";

/** A mount of the plate with what it takes to move it. */
export interface Mount extends TramMount {
  readonly type: string;
  /** Where a person looks from when turning: the part's own outer face. */
  readonly seenFrom: "below" | "above";
  /** What is turned, and its marks on a turn; 0 when it bears none. */
  readonly turned: string;
  readonly marks: number;
}

const FAMILY = "tram-mount";

/** How each joint is turned. */
const JOINTS: Readonly<Record<string, Pick<Mount, "seenFrom" | "turned" | "marks">>> = {
  "thumb-wheel": { seenFrom: "below", turned: "thumb wheel", marks: 10 },
  "captive-nut": { seenFrom: "above", turned: "bolt", marks: 0 },
  insert: { seenFrom: "above", turned: "bolt", marks: 0 },
  "tapped-plate": { seenFrom: "below", turned: "bolt", marks: 0 },
};

/** A tenth of a turn, which the family's `perLobe` is, of a whole one. */
const TENTHS = 10;

/** Returns the mounts of the plate, each with its range to both sides of the spring's set length. */
export function mountsOf({ parts, preset }: Machine): Mount[] {
  const { plate, mount: common } = preset.plan;
  return Object.entries(plate.mounts).map(
    ([
      name,
      {
        at: [x, y],
        type,
        parameters,
      },
    ]) => {
      const part = parts.find(({ owner, companion }) => {
        const [root, list, own] = owner.path;
        return !companion && owner.family === FAMILY && root === "plate" && list === "mounts" && own === name;
      });
      const design = part?.designed.design ?? statedMount(name, { ...common, ...parameters, type });
      const range = numberOf(design, "range");
      const joint = JOINTS[String(design.parameters.joint)];
      if (joint === undefined) throw new Error(`the joint of mount ${name} is not known`);
      return { name, x, y, type, pitch: TENTHS * numberOf(design, "perLobe"), up: range, down: range, ...joint };
    },
  );
}

/** A mount of which the machine makes no part, as far as the plan states it. */
function statedMount(
  name: string,
  parameters: Readonly<Record<string, unknown>>,
  printer: Printer = UNCALIBRATED,
): Design {
  const family = FAMILIES.find((one) => one.name === FAMILY);
  const parsed = family?.schema.safeParse(parameters);
  if (family === undefined || parsed?.success !== true)
    throw trouble(`the parameters of mount ${name} do not go together; tramwright check tells why`);
  return family.design(parsed.data, printer);
}

function numberOf({ dimensions }: Design, key: string): number {
  const found = dimensions.find((dimension) => dimension.key === key);
  if (found === undefined) throw new Error(`a ${FAMILY} has no ${key}`);
  return found.value;
}
