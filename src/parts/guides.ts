import type { Guide } from "./guide.ts";
import { guide as screwFoot } from "./screw-foot/guide.ts";
import { guide as thumbWheel } from "./thumb-wheel/guide.ts";
import { guide as tramMount } from "./tram-mount/guide.ts";
import { guide as wheelPlate } from "./wheel-plate/guide.ts";
import { guide as wheelSpacer } from "./wheel-spacer/guide.ts";

/** How each family is filled in. */
export const GUIDES: Readonly<Record<string, Guide>> = {
  "screw-foot": screwFoot,
  "tram-mount": tramMount,
  "thumb-wheel": thumbWheel,
  "wheel-plate": wheelPlate,
  "wheel-spacer": wheelSpacer,
};

/** How a bought item is measured, by its table; tramwright stock <table> draws what each letter means. */
export const ITEM_GUIDES: Readonly<Record<string, string>> = {
  bars: "calipers: width and height across the faces, slot opening, lip; depth rod: depth of the slot",
  bearings: "the number on its shield; calipers: bore, outside, width over both rings",
  screws: "calipers over the crests: diameter; ruler: how far the nut moves in one turn is the lead",
  pulleys: "count the teeth; calipers: bore, hub across and its length, flanges across, total height",
  belts: "ruler: ten teeth, tooth to tooth, divided by ten is the pitch; calipers: thickness with teeth",
  "shim-rings": "calipers: inside, outside, thickness",
  collars: "calipers: bore, outside, width",
  nuts: "calipers: across flats, height",
  inserts: "calipers: outside over the knurl, length",
  washers: "calipers: inside, outside, thickness",
  "large-washers": "calipers: inside, outside, thickness",
  springs: "calipers: wire, outside; length unloaded; count the turns that can move",
  wheels: "calipers: across the tyre, width, and the bore that holds the bearings",
  eccentrics: "calipers: body across, hexagon across flats and its height; half of what it shifts in half a turn",
  motors: "calipers: face across, shaft across; ruler: shaft from the face to its end",
  idlers: "calipers: across the rim the belt runs on, flanges across, width, bore",
  metals: "the maker's mark or the shop's bill; a magnet tells steel from aluminium",
  materials: "what stands on the spool",
};
