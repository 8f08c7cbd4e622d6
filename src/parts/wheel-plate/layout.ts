/** What decides where the wheels stand. */
export interface Layout {
  readonly wheels: "3" | "4" | "6" | "8";
  readonly faces?: number | undefined;
  readonly sandwich: boolean;
  readonly rowSpacing: number;
  readonly barDepth: number;
  readonly module: number;
  readonly left?: readonly WheelKind[] | undefined;
  readonly right?: readonly WheelKind[] | undefined;
}

export type WheelKind = "fixed" | "eccentric";

/** One wheel of a plate: side -1 is the left, at -x; `y` is its height over the plate's middle, mm. */
export interface PlateWheel {
  readonly side: -1 | 1;
  readonly y: number;
  readonly kind: WheelKind;
}

/** Returns how many faces of the bar carry a plate. */
export function facesOf({ wheels, faces, sandwich, barDepth, module }: Layout): 1 | 2 {
  if (faces !== undefined) return faces === 2 ? 2 : 1;
  const many = wheels === "6" || wheels === "8";
  return many && !sandwich && barDepth >= 2 * module ? 2 : 1;
}

/** Returns how many wheels one plate carries. */
export function wheelsOnPlate(layout: Layout): number {
  return Number(layout.wheels) / facesOf(layout);
}

/** Returns the heights of the rows on each side of one plate, from the lowest up. mm. */
export function sidesOf(layout: Layout): { readonly left: readonly number[]; readonly right: readonly number[] } {
  const h = layout.rowSpacing;
  const count = wheelsOnPlate(layout);
  if (count === 3) return { left: [-h / 2, h / 2], right: [0] };
  const rows = { 4: [-h / 2, h / 2], 6: [-h / 2, 0, h / 2], 8: [-h / 2, -h / 6, h / 6, h / 2] }[count] ?? [];
  return { left: rows, right: rows };
}

/** Returns the wheels of one plate: left side first, each from the lowest row up. */
export function wheelsOf(layout: Layout): PlateWheel[] {
  const { left, right } = sidesOf(layout);
  return [
    ...left.map((y, index): PlateWheel => ({ side: -1, y, kind: layout.left?.[index] ?? "fixed" })),
    ...right.map((y, index): PlateWheel => ({ side: 1, y, kind: layout.right?.[index] ?? "eccentric" })),
  ];
}

/** Returns every height at which the plate has a wheel, each once, from the lowest up. mm. */
export function rowsOf(layout: Layout): number[] {
  const { left, right } = sidesOf(layout);
  return [...new Set([...left, ...right])].sort((one, other) => one - other);
}
