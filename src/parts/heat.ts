import type { Item } from "../core/item.ts";
import { BLEND_LIMITS, MATERIALS, type Material } from "../printing/materials.ts";
import { above, below, type Finding } from "./check.ts";

/** What is kept between the place and the material's service limit before a warning, K. Source: design rule. */
const RESERVE = 15;

interface Place {
  readonly material: Item<Material>;
  /** °C. */
  readonly temperature: number;
  /** How warm it is where, in words: "it is 40 °C at the foot". */
  readonly words: string;
  /** What makes the place cooler. */
  readonly cooler: string;
}

/** Returns what is wrong with a material in a warm place: over its limit, near it, or over that of its blends. */
export function tooHotIn({ material, temperature, words, cooler }: Place): Finding | undefined {
  const { key, values } = material;
  const limit = `${key} is good to ${values.serviceLimit.toFixed(0)} °C, and ${words}`;
  const set = [...materialsFor(temperature + RESERVE), cooler].join(", or ");
  const near = above({
    value: temperature,
    unit: "°C",
    error: values.serviceLimit,
    warning: values.serviceLimit - RESERVE,
    says: (most) => (most < values.serviceLimit ? `${limit}: less than the ${RESERVE} °C of margin` : limit),
    set,
  });
  const blend = blendLimit(material);
  if (near?.level === "error" || blend === undefined || temperature <= blend) return near;
  const says = `${near?.says ?? limit}; filament blends sold as ${key} are good to ${blend} °C only`;
  const own = `material: { row: ${key}, serviceLimit: <of your spool> } if it is no blend`;
  return { level: "warning", says, set: `${own}, or ${set}`, found: temperature, limit: blend, unit: "°C" };
}

/** The limit of blends sold under the same name; undefined where the user has stated the limit of his own spool. */
function blendLimit({ key, stated }: Item<Material>): number | undefined {
  return stated.includes("serviceLimit") ? undefined : BLEND_LIMITS[key];
}

/** The materials that serve to a temperature, blends included. */
function materialsFor(temperature: number): string[] {
  const fit = MATERIALS.rows.filter(({ key, values }) => (BLEND_LIMITS[key] ?? values.serviceLimit) >= temperature);
  return fit.length === 0 ? [] : [`material: ${fit.map(({ key }) => key).join(", ")}`];
}

/** Returns what is wrong with a plate that is to be colder than the air round it, °C; `set` says which keys. */
export function colderThanAir(plate: number, ambient: number, set: string): Finding | undefined {
  return below({
    value: plate,
    unit: "°C",
    warning: ambient,
    says: (air) => `the plate is to have ${Number(plate.toPrecision(4))} °C, and the air round it ${air} °C`,
    set,
  });
}

/** Why that matters, to a part and to a machine. */
export const WHY_COLD =
  "nothing here cools a plate, so one of the two is mistyped, and growth and brackets follow from the difference";
