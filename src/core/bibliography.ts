/** How far a source can be trusted, from a published standard down to arithmetic of our own. */
export type SourceKind = "standard" | "book" | "maker" | "practice" | "geometry" | "design";

export interface Source {
  readonly kind: SourceKind;
  readonly title: string;
}

/** Every source that a number, a formula or a table row may cite. Keys are what `explain` prints after a formula. */
export const SOURCES = {
  "iso-15": { kind: "standard", title: "ISO 15, Rolling bearings: radial bearings: boundary dimensions" },
  "iso-76": { kind: "standard", title: "ISO 76, Rolling bearings: static load ratings" },
  "iso-104": { kind: "standard", title: "ISO 104, Rolling bearings: thrust bearings: boundary dimensions" },
  "iso-261": { kind: "standard", title: "ISO 261, ISO general purpose metric screw threads: general plan" },
  "iso-273": { kind: "standard", title: "ISO 273:1979, Fasteners: clearance holes for bolts and screws" },
  "iso-281": { kind: "standard", title: "ISO 281, Rolling bearings: dynamic load ratings and rating life" },
  "iso-286": { kind: "standard", title: "ISO 286-2, ISO code system for tolerances on linear sizes" },
  "iso-724": { kind: "standard", title: "ISO 724, ISO general purpose metric screw threads: basic dimensions" },
  "iso-888": { kind: "standard", title: "ISO 888, Fasteners: nominal lengths of bolts, screws and studs" },
  "iso-898-1": { kind: "standard", title: "ISO 898-1, Mechanical properties of fasteners: bolts, screws and studs" },
  "iso-965-1": { kind: "standard", title: "ISO 965-1, ISO general purpose metric screw threads: tolerances" },
  "iso-2306": { kind: "standard", title: "ISO 2306, Drills for use prior to tapping screw threads" },
  "iso-2902": { kind: "standard", title: "ISO 2902, ISO metric trapezoidal screw threads: general plan" },
  "iso-2903": { kind: "standard", title: "ISO 2903, ISO metric trapezoidal screw threads: tolerances" },
  "iso-2904": { kind: "standard", title: "ISO 2904:1977, ISO metric trapezoidal screw threads: basic dimensions" },
  "iso-4017": { kind: "standard", title: "ISO 4017:2011, Hexagon head screws, product grades A and B" },
  "iso-4026": { kind: "standard", title: "ISO 4026 to 4029, Hexagon socket set screws" },
  "iso-4032": { kind: "standard", title: "ISO 4032:2001, Hexagon nuts, style 1" },
  "iso-4035": { kind: "standard", title: "ISO 4035, Hexagon thin nuts, chamfered" },
  "iso-4762": { kind: "standard", title: "ISO 4762:2004, Hexagon socket head cap screws" },
  "iso-5296": { kind: "standard", title: "ISO 5296, Synchronous belt drives: belts with pitch codes MXL to XXH" },
  "iso-7040": { kind: "standard", title: "ISO 7040, Prevailing torque type hexagon nuts with non-metallic insert" },
  "iso-7089": { kind: "standard", title: "ISO 7089, Plain washers, normal series, product grade A" },
  "iso-7092": { kind: "standard", title: "ISO 7092, Plain washers, small series, product grade A" },
  "iso-7093-1": { kind: "standard", title: "ISO 7093-1, Plain washers, large series, product grade A" },
  "iso-7380-1": { kind: "standard", title: "ISO 7380-1:2011, Button head screws: hexagon socket button head screws" },
  "iso-10511": { kind: "standard", title: "ISO 10511, Prevailing torque type hexagon thin nuts with insert" },
  "iso-10642": { kind: "standard", title: "ISO 10642, Hexagon socket countersunk head screws" },
  "iso-13050": { kind: "standard", title: "ISO 13050, Synchronous belt drives: metric pitch, curvilinear profiles" },
  "iso-13857": { kind: "standard", title: "ISO 13857, Safety of machinery: safety distances" },
  "iso-17396": {
    kind: "standard",
    title: "ISO 17396, Synchronous belt drives: metric pitch, trapezoidal profiles T and AT",
  },
  "din-705": { kind: "standard", title: "DIN 705, Set collars" },
  "din-985": { kind: "standard", title: "DIN 985:1987, Prevailing torque type hexagon thin nuts with insert" },
  "din-988": { kind: "standard", title: "DIN 988, Shim rings and support rings" },
  "din-5418": { kind: "standard", title: "DIN 5418, Rolling bearings: dimensions for mounting" },
  "din-9021": { kind: "standard", title: "DIN 9021, Washers with outside diameter about three times the bolt" },
  "en-10270": { kind: "standard", title: "EN 10270-1 and -3, Steel wire for mechanical springs" },
  "en-13906-1": { kind: "standard", title: "EN 13906-1:2013, Cylindrical helical springs: compression springs" },
  "nema-ics-16": {
    kind: "standard",
    title: "NEMA ICS 16, Motion/position control motors, controls and feedback devices",
  },
  shigley: { kind: "book", title: "Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th to 10th ed." },
  mott: { kind: "book", title: "Mott, Machine Elements in Mechanical Design, 4th ed." },
  juvinall: { kind: "book", title: "Juvinall and Marshek, Fundamentals of Machine Component Design" },
  roark: { kind: "book", title: "Young and Budynas, Roark's Formulas for Stress and Strain, 7th ed." },
  blevins: { kind: "book", title: "Blevins, Formulas for Natural Frequency and Mode Shape" },
  incropera: { kind: "book", title: "Incropera and DeWitt, Fundamentals of Heat and Mass Transfer" },
  "machinerys-handbook": { kind: "book", title: "Machinery's Handbook" },
  openstax: { kind: "book", title: "OpenStax, College Physics" },
  "belt-makers": { kind: "maker", title: "Synchronous-belt makers' design manuals, general practice values" },
  "bearing-makers": { kind: "maker", title: "Rolling-bearing makers' catalogues, mounting pages and load ratings" },
  "spring-makers": { kind: "maker", title: "Spring makers' catalogues" },
  "profile-makers": { kind: "maker", title: "Aluminium profile makers' technical data pages" },
  "motor-makers": { kind: "maker", title: "Motor makers' data pages" },
  "material-data": { kind: "maker", title: "Filament and polymer data sheets and materials databases" },
  "fastener-suppliers": { kind: "maker", title: "Fastener suppliers' size charts" },
  "print-services": { kind: "maker", title: "Print services' design rules for filament printing" },
  "common-practice": {
    kind: "practice",
    title: "Common practice of the trade; no published source. Measure your own part",
  },
  geometry: { kind: "geometry", title: "Plane and solid geometry; derivable, no source needed" },
  statics: { kind: "geometry", title: "Statics; derivable, no source needed" },
  "design-rule": { kind: "design", title: "A design rule of this project; see docs/decisions.md" },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;

/** A source, alone or with the place in it: `"iso-76"`, `"shigley: Table 10-1"`. */
export type Citation = SourceKey | `${SourceKey}: ${string}`;

/** Returns the key and the place of a citation. */
export function splitCitation(citation: Citation): { key: SourceKey; place: string } {
  const colon = citation.indexOf(": ");
  const key = (colon < 0 ? citation : citation.slice(0, colon)) as SourceKey;
  return { key, place: colon < 0 ? "" : citation.slice(colon + 2) };
}

/** Returns a citation as a reader wants it: the title, then the place. */
export function spell(citation: Citation): string {
  const { key, place } = splitCitation(citation);
  return place === "" ? SOURCES[key].title : `${SOURCES[key].title}: ${place}`;
}
