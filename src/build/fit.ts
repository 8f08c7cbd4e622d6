import { defect } from "../core/defects.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import { type Facets, facets } from "../geometry/facets.ts";
import type { Body } from "../geometry/kernel.ts";
import type { Mesh, Vec3 } from "../geometry/mesh.ts";
import type { Contact, KeepOut, Piece } from "../parts/piece.ts";
import { contactArea } from "../verify/contact.ts";
import { boxRegion } from "../verify/region.ts";

/** More shared volume than this is a clash, mm3. */
const CLASH = 0.01;
/** Share of a drawn contact face that must be there on the finished mesh. */
const TOUCH = 0.95;

/** What reaches into keep-outs. */
export interface Entered {
  readonly diagnostics: readonly Diagnostic[];
  /** How many keep-outs are free, of all. */
  readonly free: number;
}

/** How the finished body stands to its hardware. */
export interface Fit {
  readonly diagnostics: readonly Diagnostic[];
  /** How many keep-outs are free, of all. */
  readonly free: number;
  /** How many contact faces touch, of all. */
  readonly touching: number;
}

/** Returns what of the finished body stands in keep-outs: all of the fit that needs the kernel. */
export function enteredKeepOuts({ keepOuts }: Piece, body: Body): Entered {
  const diagnostics = keepOuts.flatMap((keepOut) => enteredBy(body, keepOut));
  return { diagnostics, free: keepOuts.length - diagnostics.filter(({ level }) => level === "error").length };
}

/** Returns what is wrong between the finished body and the hardware: entered keep-outs, faces that do not touch. */
export function fitOf({ contacts }: Piece, mesh: Mesh, entered: Entered): Fit {
  const known = facets(mesh);
  const gaps = contacts.flatMap((contact) => missed(contact, mesh, known));
  return {
    diagnostics: [...entered.diagnostics, ...gaps],
    free: entered.free,
    touching: contacts.length - gaps.length,
  };
}

/** Each keep-out is tried by itself: that costs less than uniting them, and names the culprit at once. */
function enteredBy(body: Body, { name, body: close, roomy }: KeepOut): Diagnostic[] {
  const volume = body.shared(close);
  if (volume >= CLASH) return [clash(name, volume, "error")];
  const narrow = roomy === undefined ? 0 : body.shared(roomy);
  return narrow < CLASH ? [] : [clash(name, narrow, "warning")];
}

function clash(name: string, volume: number, level: "error" | "warning"): Diagnostic {
  return defect("part-in-keep-out", {
    level,
    path: [],
    says: `the part reaches ${volume.toFixed(2)} mm3 into the space of the ${name}`,
    found: { value: volume, unit: "mm3" },
    limit: { value: CLASH, unit: "mm3" },
    ...(level === "warning" ? { why: "there is room, but less than the usual 2 mm" } : {}),
    set: `the parameters that place the ${name} or the wall beside it`,
  });
}

function missed(contact: Contact, mesh: Mesh, known: Facets): Diagnostic[] {
  const { point, reach } = contact;
  const corner = (by: number): Vec3 => [point[0] + by, point[1] + by, point[2] + by];
  const area = contactArea(mesh, contact, boxRegion(corner(-reach), corner(reach)), known);
  if (area >= TOUCH * contact.area) return [];
  return [
    defect("contact-face-missing", {
      level: "error",
      path: [],
      says: `the ${contact.name} touches on ${area.toFixed(1)} mm2 of ${contact.area.toFixed(1)} mm2`,
      found: { value: area, unit: "mm2" },
      limit: { value: TOUCH * contact.area, unit: "mm2" },
      set: "the parameters that cut into this face",
    }),
  ];
}
