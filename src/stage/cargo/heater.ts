import type { Diagnostic } from "../../core/diagnostic.ts";
import { bracketTemperature } from "../../mechanics/bracket-temperature.ts";
import { heatLoss } from "../../mechanics/heat-loss.ts";
import { heatingEnergy } from "../../mechanics/heating-energy.ts";
import { stuckTemperature } from "../../mechanics/stuck-temperature.ts";
import { warmUp } from "../../mechanics/warm-up.ts";
import { wattDensity } from "../../mechanics/watt-density.ts";
import { above, below } from "../../parts/check.ts";
import { colderThanAir } from "../../parts/heat.ts";
import type { Material } from "../../printing/materials.ts";
import type { Fact, Topic } from "../fact.ts";
import { rounded } from "../parts/bar-frame.ts";
import type { Plan } from "../schema/index.ts";
import { atMost, told, worked } from "../worked.ts";
import { massesOf } from "./masses.ts";
import type { SharedStage } from "./structure.ts";
import { numberOf, type TramMount, tramMountsOf } from "./tram-mounts.ts";

/** W/cm2: too weak, hot spots, adhesive burns. */
const DENSITY = { low: 0.4, high: 1.2, most: 2 };
/** A warm-up longer than this is a wait before every print, s. */
const LONG = 20 * 60;
/** Heat lost by the bare top, and by the lagged underside. W/(m2·K) */
const FILM = { top: 10, bottom: 3 };
/** The hottest plate and widest gap for which the temperature of a bracket is estimated. */
const HOTTEST = 250;
const WIDEST = 60;

type Heater = NonNullable<Plan["plate"]["heater"]>;

/** Returns density, current, warm-up and the end of a heater that stays on; nothing for a plate without one. */
export function heater(stage: SharedStage): Topic {
  const { plan } = stage;
  const own = plan.plate.heater;
  const cold = coldPlate(plan);
  if (own === undefined) return { sections: [], diagnostics: cold };
  const density = densityOf(own);
  const warm = warmUpOf(plan, own);
  const stuck = stuckOf(stage, own, warm.loss);
  return {
    sections: [{ title: "Heater", facts: [...density.facts, ...warm.facts, ...stuck.facts] }],
    diagnostics: [...cold, ...density.diagnostics, ...warm.diagnostics, ...stuck.diagnostics],
  };
}

function coldPlate({ plate: { temperature, ambient } }: Plan): Diagnostic[] {
  const set = `temperature: ${ambient} °C or more, or ambient: as it is there`;
  return told("plate-colder-than-air", ["plate", "temperature"], colderThanAir(temperature, ambient, set));
}

interface Found {
  readonly facts: readonly Fact[];
  readonly diagnostics: readonly Diagnostic[];
}

function densityOf({ size, power, volts }: Heater): Found {
  const squares = (size[0] * size[1]) / 100;
  const heat = worked(
    wattDensity,
    { power, area: squares / 1e4, voltage: volts },
    {
      density: ["heater.density", "power for its area", atMost(DENSITY.high)],
      current: ["heater.current", `current at ${volts} V`],
    },
  );
  const value = heat.values?.density ?? DENSITY.low;
  const says = (limit: number) =>
    `the heater has ${value.toFixed(2)} W/cm2, ${value > limit ? "over" : "under"} ${limit} W/cm2`;
  const watts = (each: number) => `power: ${Math.floor(each * squares)} W`;
  const limits = { value, unit: "W/cm2", says } as const;
  const finding =
    above({
      ...limits,
      error: DENSITY.most,
      warning: DENSITY.high,
      set: `${watts(DENSITY.high)} or less, or a larger one`,
    }) ??
    below({
      ...limits,
      warning: DENSITY.low,
      set: `power: ${Math.ceil(DENSITY.low * squares)} W or more, or a smaller one`,
    });
  return { facts: heat.facts, diagnostics: told("heater-density-out-of-range", ["plate", "heater", "power"], finding) };
}

function warmUpOf(plan: Plan, { power }: Heater): Found & { readonly loss: number } {
  const { size, metal, temperature, ambient, sheet } = plan.plate;
  const area = (size[0] * size[1]) / 1e6;
  const lost = worked(
    heatLoss,
    { topFilm: FILM.top, top: area, bottomFilm: FILM.bottom, bottom: area },
    {
      loss: ["heater.loss", "heat lost per degree, underside lagged"],
    },
  );
  const loss = lost.values?.loss ?? 0;
  const alone = massesOf(plan).plate;
  const heat = metal.values.specificHeat;
  const warming = Math.max(0, temperature - ambient);
  const ideal = worked(
    heatingEnergy,
    { mass: alone, heat, warming, power },
    {
      energy: ["heater.energy", "heat that warms the bare plate"],
      time: ["heater.ideal-time", "time for that without loss"],
    },
  );
  // The sheet is counted as if it were of the plate's metal: the safe side.
  const real = worked(
    warmUp,
    { mass: alone + sheet, heat, warming, power, loss },
    {
      time: [
        "heater.time",
        `time from ${rounded(ambient, 1)} to ${rounded(temperature, 1)} °C, sheet and losses counted`,
        atMost(LONG),
      ],
    },
  );
  const facts = [...lost.facts, ...ideal.facts, ...real.facts];
  const path = ["plate", "heater", "power"];
  if (real.refusal?.defect !== undefined) {
    const { says, set, found, limit } = real.refusal.defect;
    const shown = {
      ...(found === undefined ? {} : { found: found.value }),
      ...(limit === undefined ? {} : { limit: limit.value }),
    };
    const finding = { level: "error", says, set, ...shown, unit: "K" } as const;
    return { facts, loss, diagnostics: told("plate-cannot-reach-temperature", path, finding) };
  }
  const time = real.values?.time ?? 0;
  const finding = above({
    value: time,
    unit: "s",
    warning: LONG,
    says: (limit) =>
      `the plate needs ${(time / 60).toFixed(0)} minutes to ${rounded(temperature, 1)} °C, over ${limit / 60}`,
    set: `power: ${Math.ceil((power * time) / LONG)} W or more, or a thinner plate`,
  });
  return { facts, loss, diagnostics: told("plate-cannot-reach-temperature", path, finding) };
}

/** Always shown: it is why a heater needs a cut-out of its own. */
function stuckOf(stage: SharedStage, { power, adhesive }: Heater, loss: number): Found {
  const { ambient } = stage.plan.plate;
  const end = worked(
    stuckTemperature,
    { ambient, power, loss },
    {
      temperature: ["heater.stuck", "temperature at which the plate ends when the heater stays on", atMost(adhesive)],
    },
  );
  const hot = end.values?.temperature;
  if (hot === undefined) return { facts: end.facts, diagnostics: [] };
  const brackets = tramMountsOf(stage).map((mount) => bracketAt(mount, hot, ambient));
  const soft = brackets.filter(({ value, material }) => value > material.serviceLimit);
  const glue = hot > adhesive ? [`the adhesive stands ${adhesive} °C`] : [];
  const parts = soft.map(
    ({ name, value, material }) => `${name} gets ${value.toFixed(0)} °C and is good to ${material.serviceLimit} °C`,
  );
  const over = [...glue, ...parts];
  const finding =
    over.length === 0
      ? undefined
      : ({
          level: "warning",
          says: `a heater that stays on brings the plate to ${hot.toFixed(0)} °C: ${over.join("; ")}`,
          set: "a thermal cut-out on the heater itself, in its own circuit, whatever else is set",
          found: hot,
          limit: adhesive,
          unit: "°C",
        } as const);
  const facts = [...end.facts, ...brackets.flatMap((each) => each.facts)];
  return { facts, diagnostics: told("stuck-heater-overheats-plate", ["plate", "heater", "power"], finding) };
}

function bracketAt({ part, design, given }: TramMount, hot: number, ambient: number) {
  const material: Material = given.material.values;
  const height = numberOf(design, "plateHeight");
  const inputs = { plate: Math.min(HOTTEST, hot), ambient, gap: Math.min(WIDEST, Math.max(0, height)) };
  const bracket = worked(bracketTemperature, inputs, {
    bracket: [`${part.name}.stuck`, `${part.name}: its temperature then`, atMost(material.serviceLimit)],
  });
  return { name: part.name, material, value: bracket.values?.bracket ?? 0, facts: bracket.facts };
}
