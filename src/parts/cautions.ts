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
  "heater-low-voltage":
    "A heater at low voltage draws a large current, watts divided by volts: wires and plugs glow before a supply gives up. Fuse it at the supply for 1.25 times that current, run 1 mm2 of copper for each 5 A, and fit an independent thermal cut-out on the plate.",
  "heater-supply":
    "A heater burns wires or kills, by its voltage. Up to 50 V: a fuse at the supply for 1.25 times its current, wires for more than the fuse, an independent thermal cut-out. On mains: besides, the plate bonded to protective earth, and a licensed electrician's work by your local code. Printed plastic is no insulation.",
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

/** Up to here a voltage is extra-low, V. Source: IEC 61140, from memory; wires and fuse above: common practice. */
const EXTRA_LOW = 50;

/** Returns cautions with what fits the supply of the heater, V; both kinds where that is not known. */
export function forSupply(names: readonly CautionName[], volts: number | undefined): CautionName[] {
  if (volts === undefined) return [...names];
  const fitting = volts <= EXTRA_LOW ? "heater-low-voltage" : "mains";
  return names.map((name) => (name === "heater-supply" ? fitting : name));
}

/** Returns the fumes caution for the materials that need it. */
export function fumes(material: string): CautionName[] {
  return ["ABS", "ASA", "PC"].includes(material) ? ["fumes"] : [];
}
