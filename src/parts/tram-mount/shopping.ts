import { METALS } from "../../catalogue/metals.ts";
import { washerName } from "../../catalogue/washer-name.ts";
import { isRefusal } from "../../core/calculation.ts";
import { row } from "../../core/table.ts";
import { thermalGrowth } from "../../mechanics/thermal-growth.ts";
import type { Companion, HardwareLine } from "../family.ts";
import { backHeight } from "./mounts/mount.ts";
import { type Subject, subjectOf } from "./subject.ts";

type Mount = Parameters<typeof subjectOf>[0];

/** Returns what must be bought for one mount, times the count. */
export function hardware(each: Mount): HardwareLine[] {
  const subject = subjectOf(each);
  const { given, derived, parts } = subject;
  const { count } = given;
  const { mount, heatWasher } = parts;
  return [
    { item: tramBolt(subject), count, note: given.joint === "tapped-plate" ? "from below" : "head sunk in the plate" },
    { item: washerName(parts.bolt, heatWasher), count, note: "between spring and plate, steel" },
    { item: `compression spring ${given.spring?.key ?? springName(subject)}`, count },
    {
      item: washerName(parts.bolt, { outside: derived.springWasherOutside, thickness: derived.springWasherThickness }),
      count,
      note: "under the spring, steel",
    },
    ...below(subject).map((line) => ({ ...line, count })),
    { item: `${mount.bolt} x ${derived.mountLength} cap screw`, count: 2 * count, note: `to the ${given.bar.key} bar` },
    { item: washerName(mount.bolt, mount.washer), count: 2 * count },
    { item: `slot nut ${mount.bolt} for ${given.bar.key}`, count: 2 * count },
  ];
}

function tramBolt({ given, derived, parts }: Subject): string {
  const size = `${parts.bolt} x ${derived.boltLength}`;
  if (given.joint === "tapped-plate") return `${size} hexagon or cap screw, full thread`;
  return `${size} countersunk screw${given.fullThread ? ", full thread" : ""}`;
}

function springName({ parts }: Subject): string {
  const { wire, outside, freeLength } = parts.spring;
  return `${wire} x ${outside} x ${freeLength}`;
}

function below({ given, parts }: Subject): Omit<HardwareLine, "count">[] {
  const { bolt, sliderWasher } = parts;
  const nut = `${bolt} ${given.lockNut ? "lock nut" : "nut"}`;
  const slider = { item: washerName(bolt, sliderWasher), note: "slides below" };
  switch (given.joint) {
    case "thumb-wheel":
      // Nut and washer stand on the wheel's own list.
      return [];
    case "captive-nut":
      return [{ item: nut, note: "pushed in from the side; pierce the layer over it with the bolt" }];
    case "insert":
      return [{ item: `${bolt} heat-set insert, ${parts.insert.length} long`, note: "melted in from below" }];
    case "tapped-plate":
      return [slider];
  }
}

/** Returns the thumb wheel that goes with the mount, where it has one. */
export function companions(each: Mount): Companion[] {
  const { given, derived, parts } = subjectOf(each);
  if (given.joint !== "thumb-wheel") return [];
  const { hole, outside, thickness } = parts.sliderWasher;
  const { acrossFlats, height } = parts.nut;
  return [
    {
      family: "thumb-wheel",
      role: "thumb-wheel",
      count: given.count,
      parameters: {
        bolt: parts.bolt,
        lockNut: given.lockNut,
        ...(given.nut === undefined ? {} : { nut: { row: parts.bolt, acrossFlats, height } }),
        ...(given.sliderWasher === undefined ? {} : { washer: { row: parts.bolt, hole, outside, thickness } }),
        diameter: parts.wheel,
        excursion: derived.halfTravel,
        barDistance: derived.reach,
        material: given.material.key,
      },
    },
  ];
}

/** Says what plate the growth belongs to, so that a plate of another size or temperature is noticed. */
function grows({ given }: Subject): string[] {
  const warming = given.plateTemperature - given.ambient;
  if (given.type === "fixed" || given.growth === 0 || warming <= 0) return [];
  const { expansion } = row(METALS, "aluminium 6061-T6").values;
  const each = thermalGrowth.compute({ expansion, length: 1, warming });
  if (isRefusal(each)) return [];
  const away = (given.growth / each.growth).toFixed(0);
  const { plateTemperature, ambient, growth } = given;
  return [
    `growth ${growth} mm: an aluminium plate ${away} mm from its fixed mount, from ${ambient} to ${plateTemperature} °C; farther or hotter, give \`growth\``,
  ];
}

/** Returns the figures for the sheet: spring table, tram step, torque, room over the bar. */
export function limits(each: Mount): string[] {
  const subject = subjectOf(each);
  const { given, derived, parts } = subject;
  const { longest, shortest, setLength, forceSet, forceLong, forceShort } = derived;
  const at = (length: number, force: number) => `${length.toFixed(1)} mm: ${force.toFixed(0)} N`;
  const from = given.joint === "thumb-wheel" || given.joint === "tapped-plate" ? "below" : "above";
  const barTop = given.mount === "on-top" ? -derived.thickness : derived.rowHeight + given.bar.values.module / 2;
  const over = derived.plateHeight - derived.range - Math.max(barTop, backHeight(subject));
  return [
    `${parts.mount.bolt} on plastic: at most ${derived.torqueAllowed.toFixed(2)} N·m; retighten after a day`,
    `spring as set ${at(setLength, forceSet)}; high ${at(longest, forceLong)}; low ${at(shortest, forceShort)}`,
    `a turn is ${parts.thread.pitch} mm; clockwise seen from ${from} lowers the plate`,
    ...grows(subject),
    `bracket about ${derived.bracketTemperature.toFixed(0)} °C, ${given.material.key} good to ${given.material.values.serviceLimit.toFixed(0)} °C: measure it`,
    over >= 2
      ? `at its lowest the plate clears bar and bracket by ${over.toFixed(1)} mm, so it may reach over the bar`
      : `the bar stands ${Math.abs(over).toFixed(1)} mm ${over < 0 ? "above" : "under"} the plate at its lowest: the plate must end before the bar`,
  ];
}
