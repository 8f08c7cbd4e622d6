import { inscription, roomForText } from "../engraving.ts";
import type { Foot } from "../modes/mounting.ts";
import { defaults } from "../unused.ts";
import type { FootCheck } from "./seat.ts";

const dropped: FootCheck = {
  name: "label-not-engraved",
  path: ["label"],
  why: "feet of different heights look alike, and one without its label is soon in the wrong place",
  trips: { note: { label: "LEFT END", mount: "on-top", beltPlane: 24 } },
  test: (foot) => {
    const label = foot.given.label.trim();
    if (label === "" || foot.given.label === defaults().label) return undefined;
    const said = inscription(foot);
    if (said?.lines.some((line) => line.startsWith(label))) return undefined;
    const { wide, high } = roomForText(foot);
    const instead = said === undefined ? "nothing is engraved" : `only ${said.lines[0]} is engraved`;
    return {
      level: "note",
      says: `the label ${label} does not fit the bare wall, ${wide.toFixed(1)} mm wide and ${high.toFixed(1)} mm high: ${instead}`,
      set: shorter(foot, label) ?? "a higher seat or a thicker floor gives room; or mark the foot by hand",
    };
  },
};

/** The longest beginning of the label that would fit; undefined when not even a letter does. */
function shorter(foot: Foot, label: string): string | undefined {
  for (let letters = label.length - 1; letters > 0; letters--) {
    const part = label.slice(0, letters).trim();
    const said = inscription({ ...foot, given: { ...foot.given, label: part } });
    if (said?.lines.some((line) => line.startsWith(part)))
      return `label: ${letters === 1 ? "1 letter" : `${letters} letters`}, such as ${part}`;
  }
  return undefined;
}

export const letteringChecks: readonly FootCheck[] = [dropped];
