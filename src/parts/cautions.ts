/** Plain cautions, one line each: what can happen, what to do. Printed wherever a part's use calls for them. */
export const CAUTIONS = {
  "not-lifting-gear":
    "Printed parts are not rated lifting gear. Nothing living or valued under or on the stage; look for cracks every month.",
  "stage-can-fall":
    "A raised stage can fall: power off, loose set screw, snapped belt, split bracket. Prop it with timber or steel before working below.",
  nips: "Turning screws and belts draw in hair, sleeves, gloves and fingers. Guard them; unplug before touching.",
  "set-screws-carry":
    "The stage's weight hangs on set screws. File flats for them, or add a clamp collar on the washer.",
  "hot-surface":
    "The plate burns skin and stays hot for many minutes. Label it, keep flammables away, never leave it alone.",
  mains:
    "A heater on mains voltage at a plate you touch can kill. Bond the plate to protective earth, fit an independent thermal cut-out and a fuse; wiring follows your local electrical code and is a licensed electrician's work. Printed plastic is no insulation.",
  springs: "A compressed spring flies. Unload it before undoing the bolt.",
  softens: "The material softens near its limit and creeps under load below it. Keep to the temperatures on the sheet.",
  crush:
    "Lead screws multiply force: at motor stall they crush fingers. Fit travel stops and a stop switch in reach first.",
  fumes: "Printing ABS, ASA or PC gives off fumes. Ventilate.",
  "own-responsibility":
    "These figures are estimates from generic plastic data, not a certificate. Local rules and licensed practice come first.",
} as const;

export type CautionName = keyof typeof CAUTIONS;

export const isCaution = (name: string): name is CautionName => Object.hasOwn(CAUTIONS, name);

/** Returns the fumes caution for the materials that need it. */
export function fumes(material: string): CautionName[] {
  return ["ABS", "ASA", "PC"].includes(material) ? ["fumes"] : [];
}
