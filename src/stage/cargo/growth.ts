import { growthVector } from "../../mechanics/growth-vector.ts";
import { thermalGrowth } from "../../mechanics/thermal-growth.ts";
import type { Fact, Section } from "../fact.ts";
import { rounded } from "../parts/bar-frame.ts";
import type { Plan } from "../schema/index.ts";
import { worked } from "../worked.ts";

/** How the plate grows at one mount. */
export interface MountGrowth {
  /** Away from the fixed mount, mm. */
  readonly growth: number;
  /** From the fixed mount, deg counter-clockwise from +x; the fixed one itself has none. */
  readonly direction: number | undefined;
  readonly facts: readonly Fact[];
}

/** Returns the growth at each mount; the fixed one stays. Without a fixed one the plate grows from its middle. */
export function growthOf({ plate }: Plan): Readonly<Record<string, MountGrowth>> {
  const { mounts, metal, temperature, ambient } = plate;
  const fixed = Object.values(mounts).find(({ type }) => type === "fixed");
  const [x, y] = fixed?.at ?? plate.at;
  const warm = { plate: metal.values.expansion, plateWarming: temperature - ambient, frame: 0, frameWarming: 0 };
  return Object.fromEntries(
    Object.entries(mounts).map(([name, mount]): [string, MountGrowth] => {
      const growth = worked(
        growthVector,
        { ...warm, x: mount.at[0] - x, y: mount.at[1] - y },
        {
          growth: [`mount.${name}.growth`, `mount ${name}: how far the plate grows there`],
          direction: [`mount.${name}.direction`, `mount ${name}: direction of its growth, and of its slot`],
          travel: [`mount.${name}.travel`, `mount ${name}: half travel that a slot needs`],
        },
      );
      const { values, facts } = growth;
      return [name, { growth: values?.growth ?? 0, direction: values?.direction, facts }];
    }),
  );
}

/** Returns the growth of the plate as a whole and at its mounts. */
export function growth(plan: Plan): Section {
  const { size, metal, temperature, ambient } = plan.plate;
  const warm = { expansion: metal.values.expansion, warming: temperature - ambient };
  const whole = (axis: "x" | "y", length: number) =>
    worked(
      thermalGrowth,
      { ...warm, length },
      {
        growth: [
          `plate.growth.${axis}`,
          `growth of the plate along ${axis} from ${rounded(ambient, 1)} to ${rounded(temperature, 1)} °C`,
        ],
      },
    ).facts;
  const mounts = Object.values(growthOf(plan)).flatMap(({ facts }) => facts);
  return { title: "Growth of the plate", facts: [...whole("x", size[0]), ...whole("y", size[1]), ...mounts] };
}
