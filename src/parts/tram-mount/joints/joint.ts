import type { Box } from "../../../geometry/mesh.ts";
import { slotAlong } from "../../../geometry/profile.ts";
import { prism, type Solid } from "../../../geometry/solid.ts";
import { uprightHole } from "../../../printing/compensation.ts";
import { bedOpening } from "../../features/bed-opening.ts";
import type { Contact, KeepOut } from "../../piece.ts";
import { type Subject, slotDirection } from "../subject.ts";

/** What one kind of joint cuts, the hardware it brings, and the faces it slides on. */
export interface Joint {
  readonly cuts: readonly Solid[];
  readonly keepOuts: readonly KeepOut[];
  readonly contacts: readonly Contact[];
  readonly membranes: readonly Box[];
}

/** Returns the outline of the bolt's opening as modelled, wider all round by `more` mm. */
export function openingProfile({ given, derived, printer }: Subject, more = 0) {
  const width = uprightHole(derived.openingWidth, printer) + 2 * more;
  const length = uprightHole(derived.openingLength, printer) + 2 * more;
  return slotAlong([0, 0], slotDirection(given), width, length);
}

/** Returns what the first layer, which spreads into the opening, must be cut wider. A washer lies there: no chamfer. */
export function firstLayerRelief(subject: Subject): Solid {
  const { derived, printer } = subject;
  const bed = -derived.thickness;
  return prism(openingProfile(subject, bedOpening(printer)), bed - 1, bed + printer.firstLayer);
}

/** Returns the area of the opening on the bed face, first-layer relief included. mm2. */
export function openingArea({ derived, printer }: Subject): number {
  const more = 2 * bedOpening(printer);
  const width = uprightHole(derived.openingWidth, printer) + more;
  const length = uprightHole(derived.openingLength, printer) + more;
  return (Math.PI / 4) * width ** 2 + width * (length - width);
}
