import type { Body, BodyKind, RoomName } from "../../stage/bodies/index.ts";

/** Two kinds of bodies that may share space, and why. */
export interface Allowed {
  readonly kinds: readonly [BodyKind, BodyKind];
  /** `own` where only bodies that belong together may, as a screw and its own pulley; `any` where all may. */
  readonly which: "own" | "any";
  /** The room of the first of the two in which they may; left out where they may anywhere. */
  readonly room?: RoomName;
  /** Set where most of them only touch. */
  readonly seldom?: true;
  readonly why: string;
}

/** An entry that lets two bodies share space, and which of them has the room. */
export interface Allowance {
  readonly entry: Allowed;
  readonly owner: Body;
}

/** Every pair of bodies that may share space. Everything else that does is a clash. */
export const ALLOWED: readonly Allowed[] = [
  { kinds: ["bearing", "screw"], which: "own", why: "the screw stands in the bearing's bore, which is not drawn" },
  { kinds: ["ring", "screw"], which: "own", why: "the screw stands in the hole of the rings, which is not drawn" },
  { kinds: ["collar", "screw"], which: "own", why: "the collar is clamped on its screw; its bore is not drawn" },
  { kinds: ["pulley", "screw"], which: "own", why: "the pulley is held on its screw; its bore is not drawn" },
  { kinds: ["motor", "pulley"], which: "own", room: "shaft", why: "the motor's shaft stands in the pulley's bore" },
  { kinds: ["pulley", "belt"], which: "own", room: "groove", why: "the teeth of a belt stand in those of its pulley" },
  { kinds: ["idler", "belt"], which: "own", room: "groove", why: "a belt lies on its idler, near enough" },
  {
    kinds: ["bearing", "part"],
    which: "own",
    room: "press",
    seldom: true,
    why: "a bearing may be pressed into its pocket",
  },
  { kinds: ["bar", "part"], which: "any", room: "slots", why: "keys stand in the slots of bars, which are not drawn" },
  { kinds: ["bar", "wheel"], which: "own", room: "skin", why: "V wheels run in the grooves of their post" },
  { kinds: ["nut", "screw"], which: "own", why: "the screw stands in the thread of its nut, which is not drawn" },
  { kinds: ["idler", "idler-axle"], which: "own", why: "the axle stands in the idler's bore, which is not drawn" },
  { kinds: ["eccentric", "axle"], which: "own", why: "the axle stands in the eccentric's bore, which is not drawn" },
  { kinds: ["tram-bolt", "plate"], which: "own", why: "the bolt stands in its hole of the plate, which is not drawn" },
  { kinds: ["tram-bolt", "spring"], which: "own", why: "the bolt stands inside the coils, which are drawn filled" },
  { kinds: ["tram-bolt", "washer"], which: "own", why: "the bolt stands in the holes of washers, which are not drawn" },
  { kinds: ["tram-bolt", "thumb-wheel"], which: "own", why: "the bolt stands in the wheel's nut, which is not drawn" },
  { kinds: ["wheel", "axle"], which: "own", why: "the axle stands in the wheel's bearings, whose bore is not drawn" },
];

/** Returns the entry that lets two bodies share space, and which of them has the room. */
export function allowanceOf(one: Body, other: Body, table: readonly Allowed[] = ALLOWED): Allowance | undefined {
  for (const entry of table) {
    const [kind, second] = entry.kinds;
    if (entry.which === "own" && !together(one, other)) continue;
    if (one.kind === kind && other.kind === second) return { entry, owner: one };
    if (other.kind === kind && one.kind === second) return { entry, owner: other };
  }
  return undefined;
}

/** Whether two bodies belong together. */
export function together(one: Body, other: Body): boolean {
  return one.belongsTo.some((member) => other.belongsTo.includes(member));
}
