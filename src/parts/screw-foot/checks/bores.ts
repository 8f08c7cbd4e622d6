import type { Finding } from "../../check.ts";
import type { Derived } from "../derive/index.ts";
import type { Parameters } from "../parameters.ts";
import type { FootCheck } from "./seat.ts";

/** A shaft this much thicker than its bore does not go in: what calipers may be off, mm. common practice */
const THICKER = 0.05;
/** A crest may be 0.3 mm under its nominal size (ISO 2903, class 7e, pitch 4), a bore 0.05 mm over it, mm. */
const THINNER = 0.35;
/** A shoulder needs this much face all round to stand on a ring, mm. */
const FACE = 0.5;

/** Something with a bore, and the shaft it sits on. */
interface Fitting {
  readonly path: keyof Parameters;
  readonly what: string;
  readonly bore: number;
  readonly shaft: number;
  readonly on: string;
  /** Whether a wide bore does no harm: a ring lies on the bearing, nothing centres it. */
  readonly loose?: boolean;
}

const size = (value: number) => String(Math.round(value * 1000) / 1000);

const fits = ({ bore, shaft, loose }: Fitting) => shaft <= bore + THICKER && (loose || shaft >= bore - THINNER);

/** A shoulder stands on the rings: what lies above them sits on the whole screw, all else on the end. */
function fittingsOf(given: Parameters, { bought, posts }: Derived): { bearing: Fitting[]; others: Fitting[] } {
  const { key } = given.screw;
  const turned = given.endDiameter !== undefined;
  const end = { shaft: bought.end, on: turned ? `the turned end of the ${key}` : `the ${key}` };
  const whole = { shaft: bought.screw.diameter, on: `the ${key}` };
  const above = given.thrust === "shoulder" ? whole : end;
  const bearing = { path: "bearing", what: `bearing ${given.bearing.key}`, bore: bought.bearing.bore } as const;
  // A ring that was left out follows the bearing, and so does a collar.
  const rings = (given.washers ?? []).map(
    ({ key: ring, values }): Fitting => ({
      path: "washers",
      what: `ring ${ring}`,
      bore: values.hole,
      ...end,
      loose: true,
    }),
  );
  const collar: Fitting[] =
    given.thrust === "collar" && given.collar !== undefined
      ? [{ path: "collar", what: `collar ${given.collar.key}`, bore: bought.collar.bore, ...end }]
      : [];
  const pulley: Fitting = { path: "pulley", what: `pulley ${given.pulley.key}`, bore: bought.pulley.bore, ...above };
  const second = posts.length > 0 ? [{ ...bearing, what: `second ${bearing.what}`, ...above }] : [];
  return { bearing: [{ ...bearing, ...end }, ...second], others: [...rings, ...collar, pulley] };
}

/** Returns all of the fittings that do not fit; `set` is what makes the first of them right. */
function misfit(fittings: readonly Fitting[], set: (wrong: Fitting) => string): Finding | undefined {
  const wrong = fittings.filter((one) => !fits(one));
  const [first] = wrong;
  if (first === undefined) return undefined;
  const says = wrong.map(({ what, bore, shaft, on }) => {
    const how = shaft > bore ? "does not go into" : "is loose in";
    return `${on}, ${size(shaft)} mm, ${how} the ${size(bore)} mm bore of the ${what}`;
  });
  const { path, shaft: found, bore: limit } = first;
  return { level: "error", path: [path], says: says.join("; "), set: set(first), found, limit, unit: "mm" };
}

const screwMisfit: FootCheck = {
  name: "screw-does-not-fit-bearing",
  path: ["bearing"],
  why: "a screw that does not go in cannot be assembled, one that is loose knocks and wanders with the belt",
  trips: { error: { bearing: "6001" } },
  test: ({ given, derived }) => {
    const { screw } = derived.bought;
    return misfit(fittingsOf(given, derived).bearing, ({ bore, shaft, what }) => {
      if (what.startsWith("second")) return "style: open, or thrust: collar on an end turned down all the way";
      if (bore < screw.diameter && shaft !== bore) {
        return `a bearing of ${size(shaft)} mm bore, or endDiameter: ${size(bore)} mm if the screw's end is turned down to it`;
      }
      return `a bearing of ${size(shaft)} mm bore, or a screw of ${size(bore)} mm`;
    });
  },
};

const boreMisfit: FootCheck = {
  name: "bore-does-not-fit-screw",
  path: ["pulley"],
  why: "what is too narrow does not go on the screw, what is too wide runs out of true and slips",
  trips: { error: { pulley: "20 teeth 2 mm" } },
  test: ({ given, derived }) =>
    misfit(fittingsOf(given, derived).others, ({ path, shaft }) =>
      path === "pulley"
        ? `pulley: { row: "${given.pulley.key}", bore: ${size(shaft)} } if it is sold or bored so`
        : `${path}: ${path === "collar" ? "one" : "rings"} of ${size(shaft)} mm bore`,
    ),
};

const endTooThick: FootCheck = {
  name: "turned-end-thicker-than-screw",
  path: ["endDiameter"],
  why: "turning takes off: an end as thick as the screw leaves no shoulder, a thicker one cannot be",
  trips: { error: { endDiameter: 9 } },
  test: ({ given, derived: { bought } }) => {
    const { end, screw } = bought;
    const shoulder = given.thrust === "shoulder";
    if (!shoulder && end <= screw.diameter) return undefined;
    const most = shoulder ? screw.diameter - 2 * FACE : screw.diameter;
    if (end <= most + 1e-9) return undefined;
    const says = `the end is ${size(end)} mm thick, the ${given.screw.key} ${size(screw.diameter)} mm`;
    return {
      level: "error",
      says: shoulder ? `${says}: there is no shoulder to stand on` : says,
      set: shoulder
        ? `endDiameter: at most ${size(most)} mm, or another thrust`
        : `endDiameter: at most ${size(most)} mm`,
      found: end,
      limit: most,
      unit: "mm",
    };
  },
};

export const boreChecks: readonly FootCheck[] = [screwMisfit, boreMisfit, endTooThick];
