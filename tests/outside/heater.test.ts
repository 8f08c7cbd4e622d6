import { expect, test } from "vitest";
import * as m from "../../src/mechanics/index.ts";
import { one } from "../mechanics/printed.ts";
import { type Dice, dice } from "./random.ts";
import { reach, type State, step } from "./step.ts";

// Source of every check in this file: the balance of heat of a plate of one temperature, heat in less heat out, stepped
// through time by the Runge-Kutta method; nothing of the closed solution is used.

/** A random plate with its heater: air at `air`, two faces that lose heat on their own. */
function plate(roll: Dice) {
  const [wide, deep, thick] = [roll.between(150, 500), roll.between(150, 500), roll.between(3, 10)];
  const area = (wide * deep) / 1e6;
  const air = roll.between(5, 35);
  const faces = { topFilm: roll.between(8, 12), top: area, bottomFilm: roll.between(2, 9), bottom: area };
  const mass = one(m.plateMass, "mass", { length: wide, width: deep, thickness: thick, density: 2.7 });
  const heat = roll.between(700, 1000);
  const power = roll.between(100, 900);
  // State: temperature, heat put in, heat lost.
  const rates = ([temperature = 0]: State): State => {
    const over = temperature - air;
    const lost = faces.topFilm * faces.top * over + faces.bottomFilm * faces.bottom * over;
    return [(power - lost) / (mass * heat), power, lost];
  };
  return { air, faces, mass, heat, power, rates, loss: one(m.heatLoss, "loss", faces) };
}

test("warm-up time, and the energy that stays in the plate", () => {
  const roll = dice(70);
  for (let run = 0; run < 60; run++) {
    const { air, mass, heat, power, rates, loss } = plate(roll);
    const end = power / loss;
    const warming = Math.min(250, end * roll.between(0.2, 0.98));
    const time = one(m.warmUp, "time", { mass, heat, warming, power, loss });
    const there = reach(rates, [air, 0, 0], air + warming, time / 400);
    expect(time / there.time).toBeCloseTo(1, 7);
    const [, put = 0, lost = 0] = there.state;
    expect((put - lost) / one(m.heatingEnergy, "energy", { mass, heat, warming, power })).toBeCloseTo(1, 8);
  }
});

test("without loss a plate warms in the ideal time", () => {
  const roll = dice(71);
  for (let run = 0; run < 20; run++) {
    const { air, mass, heat, power } = plate(roll);
    const warming = roll.between(20, 120);
    const there = reach(() => [power / (mass * heat)], [air], air + warming, 1);
    expect(one(m.heatingEnergy, "time", { mass, heat, warming, power }) / there.time).toBeCloseTo(1, 9);
  }
});

test("with the heater stuck on the plate ends at the temperature told, and never gets beyond it", () => {
  const roll = dice(72);
  for (let run = 0; run < 40; run++) {
    const { air, mass, heat, power, rates, loss } = plate(roll);
    const told = one(m.stuckTemperature, "temperature", { ambient: air, power, loss });
    const slow = (mass * heat) / loss;
    let state: State = [air, 0, 0];
    for (let count = 0; count < 500; count++) {
      state = step(rates, state, slow / 20);
      expect(state[0]).toBeLessThan(told + 1e-9 * told);
    }
    expect((state[0] ?? 0) / told).toBeCloseTo(1, 8);
  }
});

test("what the heater cannot reach is refused, and the plate indeed stays below", () => {
  const roll = dice(73);
  let seen = 0;
  while (seen < 20) {
    const { air, mass, heat, power, rates, loss } = plate(roll);
    const warming = (power / loss) * roll.between(1.001, 1.3);
    if (warming > 250) continue;
    seen++;
    const outcome = m.warmUp.compute({ mass, heat, warming, power, loss });
    expect(outcome).toMatchObject({ defect: { name: "heater-never-gets-there", limit: { value: warming } } });
    let state: State = [air, 0, 0];
    for (let count = 0; count < 400; count++) state = step(rates, state, (mass * heat) / loss / 20);
    expect(state[0]).toBeLessThan(air + warming);
  }
});
