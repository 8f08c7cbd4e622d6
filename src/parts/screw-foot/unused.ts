import { boughtFor } from "./bought.ts";
import { overBar } from "./derive/stack.ts";
import { type Parameters, schema } from "./parameters.ts";

/** When a setting counts, and what to choose so that it does. */
interface Use {
  readonly counts: (given: Parameters) => boolean;
  readonly with: string;
}

const mount = (...mounts: Parameters["mount"][]): Use => ({
  counts: (given) => mounts.includes(given.mount),
  with: `mount: ${mounts.join(", ")}`,
});
const thrust = (...paths: Parameters["thrust"][]): Use => ({
  counts: (given) => paths.includes(given.thrust),
  with: `thrust: ${paths.join(", ")}`,
});

const carries = thrust("pulley", "collar", "shoulder", "tip");

/** The settings that not every foot uses. */
const USES: Partial<Readonly<Record<keyof Parameters, Use>>> = {
  cornerAngle: mount("in-corner"),
  cornerMeasured: {
    counts: (given) => given.mount === "in-corner" && given.locate !== "none",
    with: "mount: in-corner and locate: key",
  },
  axisOffset: mount("on-side", "in-corner", "on-post", "under"),
  axisOffsetB: mount("in-corner"),
  offset: mount("on-top"),
  lowestZ: mount("on-post"),
  locate: {
    // Where there is no key, none was the right word for it.
    counts: (given) => given.locate === "none" || ["on-side", "in-corner", "under"].includes(given.mount),
    with: "mount: on-side, in-corner, under",
  },
  tipRelief: {
    counts: (given) => given.thrust !== "tip" && overBar(given, boughtFor(given)),
    with: "mount: on-top, the screw over the bar and not on its tip",
  },
  collar: thrust("collar"),
  axialLoad: carries,
  lightestLoad: {
    counts: (given) => carries.counts(given) && given.otherSink === undefined,
    with: `${carries.with}, without otherSink`,
  },
  otherSink: carries,
  steadyLoad: {
    counts: (given) => carries.counts(given) && (given.lightestLoad ?? given.otherSink) !== undefined,
    with: `${carries.with}, and lightestLoad or otherSink`,
  },
  crashForce: thrust("pulley", "collar"),
  postAzimuths: { counts: ({ style }) => style === "bridged", with: "style: bridged" },
  bearingToNut: { counts: ({ style }) => style !== "bridged", with: "style: open or walled" },
  nutFloat: {
    counts: ({ style, bearingToNut }) => style !== "bridged" && bearingToNut !== undefined,
    with: "bearingToNut, and style: open or walled",
  },
};

export interface Unused {
  readonly name: keyof Parameters;
  readonly with: string;
}

let usual: Parameters | undefined;

/** Returns the foot that nothing was said of. */
export function defaults(): Parameters {
  usual ??= schema.parse({});
  return usual;
}

/** Returns the settings that differ from their defaults and that this foot does not use. */
export function unusedSettings(given: Parameters): Unused[] {
  return (Object.entries(USES) as [keyof Parameters, Use][]).flatMap(([name, use]) => {
    const asked = JSON.stringify(given[name]) !== JSON.stringify(defaults()[name]);
    return asked && !use.counts(given) ? [{ name, with: use.with }] : [];
  });
}
