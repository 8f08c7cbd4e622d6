import { alsoLines } from "./also-lines.ts";
import { comment } from "./comment.ts";
import type { Pen } from "./stage-text.ts";
import { type Attempt, screwSpots } from "./starter-plan.ts";

/** Returns the sections of plate, carriages and masses. */
export function plateSection({ frame, answers, value, named }: Pen, { inset }: Attempt): string[] {
  const { mountFront, mountBack, carriers, snap } = frame;
  const [x, y] = frame.plateAt;
  const aside = snap(answers.plate[0] * 0.36);
  const mounts = {
    one: { at: [x - aside, mountFront], type: "fixed", bar: carriers[0] },
    two: { at: [x + aside, mountFront], type: "slot", bar: carriers[0] },
    three: { at: [x, mountBack], type: "free", bar: carriers[1] },
  };
  const nuts = Object.values(screwSpots(frame, answers.screws, inset)).map(({ at }) => at);
  const middle = [0, 1].map((axis) => snap(nuts.reduce((sum, at) => sum + (at[axis] ?? 0), 0) / nuts.length));
  const heater = { size: answers.plate.map((side) => snap(side / 2)), power: "120 W", volts: 24 };
  return [
    "",
    "# ---- Plate, on three mounts that level it",
    ...comment(
      "",
      "measure  ",
      "at: middle of the plate from the frame's outer faces; size: tape; thickness: calipers; sheet: scales, with the heater; temperature: what it is set to",
    ),
    ...alsoLines("", "plate", ["at", "size", "thickness", "sheet", "temperature", "mounts", "heater"]),
    "plate:",
    `  at: ${value([x, y])}`,
    `  size: ${value(answers.plate)}`,
    `  thickness: ${answers.units === "mm" ? "6" : "1/4"}`,
    "  sheet: 0.5 kg",
    "  temperature: 50 °C",
    ...comment(
      "  ",
      "measure  ",
      "at: tape, outer faces of the frame to the hole in the plate; bar: the one that carries the mount",
    ),
    ...comment("  ", "", "fixed: the plate grows away from it; slot: it slides to and from that; free: any way."),
    "  mounts:",
    ...named(mounts).map((line) => `  ${line}`),
    ...comment("  ", "", "When it has a heater:"),
    `  # heater: ${value(heater)}`,
    ...comment("", "", "What all mounts have in common: any parameter that tramwright parts tram-mount lists."),
    "mount: { spring: 1.5 x 10 x 25, range: 1.8 mm }",
    "",
    ...comment("", "", "---- Carriages: wheel plates that run on the posts and hold the stage's side bars"),
    "carriages:",
    ...named({
      left: { post: "post-left", arms: ["side-left"] },
      right: { post: "post-right", arms: ["side-right"] },
    }),
    ...comment(
      "",
      "",
      "What all have in common: any parameter that tramwright parts wheel-plate lists. Measure what the wheels' fit hangs on: overWheels, calipers over two wheels pressed on the bar.",
    ),
    "# carriage: { overWheels: 63.5 mm, material: PETG }",
    "",
    "# ---- What goes up and down besides plate and bars",
    ...comment("", "measure  ", "scales; at: where it sits"),
    "masses:",
    ...named({ nuts: { mass: "0.4 kg", at: middle } }),
    "# the heaviest thing that is put on the plate",
    "print: 1 kg",
    "# layer heights it is to print with, or the steps by which it is moved",
    `layers: [${answers.screws === 2 ? 0.3 : 0.2} mm]`,
  ];
}
