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
  /** Length of its spring now, mm, and whether somebody measured it; else it is taken to be as set. */
  readonly spring: number;
  readonly measured: boolean;
}

const FAMILY = "tram-mount";

/** How each joint is turned. */
const JOINTS: Readonly<Record<string, Pick<Mount, "seenFrom" | "turned" | "marks">>> = {
  "thumb-wheel": { seenFrom: "below", turned: "thumb wheel", marks: 10 },
  "captive-nut": { seenFrom: "above", turned: "bolt", marks: 0 },
  insert: { seenFrom: "above", turned: "bolt", marks: 0 },
  "tapped-plate": { seenFrom: "below", turned: "bolt", marks: 0 },
};

/** As near to the end of the travel as calipers tell, mm. */
const BEYOND = 0.05;

/** A tenth of a turn, which the family's `perLobe` is, of a whole one. */
const TENTHS = 10;

/**
 * Returns the mounts of the plate, each with what is left of its travel. `springs` are the lengths that were measured, by
 * the names of the mounts; the others are taken to be as set, in the middle of their travel.
 */
export function mountsOf({ parts, preset }: Machine, springs: Readonly<Record<string, number>> = {}): Mount[] {
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
      const { spring, measured, ...left } = travelOf(name, design, springs[name]);
      const joint = JOINTS[String(design.parameters.joint)];
      if (joint === undefined) throw new Error(`the joint of mount ${name} is not known`);
      const pitch = TENTHS * numberOf(design, "perLobe");
      return { name, x, y, type, pitch, ...left, spring, measured, ...joint };
    },
  );
}

/** What is left of a mount's travel: it rises until its spring is at the longest, and sinks to the shortest. mm */
function travelOf(name: string, design: Design, measured: number | undefined) {
  const [set, range] = [numberOf(design, "setLength"), numberOf(design, "range")];
  const spring = measured ?? set;
  const [up, down] = [set + range - spring, spring - (set - range)];
  if (up < -BEYOND || down < -BEYOND)
    throw trouble(
      `the spring of mount ${name} is ${spring.toFixed(2)} mm long, outside its travel of ` +
        `${(set - range).toFixed(2)} to ${(set + range).toFixed(2)} mm; set it to ${set.toFixed(2)} mm first`,
    );
  return { up: Math.max(0, up), down: Math.max(0, down), spring, measured: measured !== undefined };
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
