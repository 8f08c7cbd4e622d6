import type { Fact, Section } from "../fact.ts";
import type { SharedStage } from "./structure.ts";

/** Lengths of bolts as the families call them; 0 stands for one that no stock length fits, which a check names. */
const LENGTHS = ["boltLength", "mountLength", "armBoltLength"];

/** Returns the bolt lengths of all parts, and per part what is bought for it. */
export function fasteners(stage: SharedStage): Section {
  const known = stage.designed.map(({ part, design }) => ({ name: part.name, design }));
  const facts = known.flatMap(({ name, design }) =>
    design.dimensions.flatMap(({ key, meaning, value, unit }): Fact[] =>
      LENGTHS.includes(key) && value > 0 ? [{ key: `${name}.${key}`, label: `${name}: ${meaning}`, value, unit }] : [],
    ),
  );
  const lines = known.map(({ name, design }) => {
    const items = design.hardware.map(({ item, count }) => `${count} x ${item}`);
    return `${name}: ${items.join(", ")}`;
  });
  return { title: "Fasteners", facts, lines };
}
