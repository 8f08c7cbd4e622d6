/** A fit between a bought part and a printed one: what the wanted size adds to the nominal, on the diameter, in mm. */
export const FITS = {
  dropIn: { adds: 0.12, meaning: "lifts out by hand" },
  push: { adds: 0, meaning: "held by a thumb push" },
  press: { adds: -0.08, meaning: "pressed in and meant to stay" },
  hexPocket: { adds: 0.2, meaning: "a nut slides in by hand, across flats" },
  hexGrip: { adds: 0.05, meaning: "a nut is pulled in, across flats" },
  sideSlotWidth: { adds: 0.25, meaning: "a nut is pushed in from the side, across flats" },
  sideSlotHeight: { adds: 0.3, meaning: "a nut is pushed in from the side, height" },
  springPocket: { adds: 0.8, meaning: "a spring must not rub" },
  barRegister: { adds: 0.2, meaning: "a part embraces a bar" },
  slotKey: { adds: -0.3, meaning: "a rib enters a bar's slot" },
  headRecess: { adds: 0.6, meaning: "a head or washer sits in a counterbore" },
} as const satisfies Record<string, { adds: number; meaning: string }>;

export type Fit = keyof typeof FITS;

/** Returns the printed size that is wanted for a nominal one. mm. Source: common practice; see docs/decisions.md. */
export function wanted(nominal: number, fit: Fit): number {
  return nominal + FITS[fit].adds;
}
