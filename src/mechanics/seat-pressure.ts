import { bounded } from "./bounded.ts";

/** Pressure of a bearing's outer ring on its printed seat; a tenth of the ring is lost to push-out slots. */
export const seatPressure = bounded({
  name: "seat-pressure",
  title: "Pressure on a bearing's seat",
  inputs: {
    force: { symbol: "F_a", unit: "N", meaning: "thrust on the seat" },
    pocket: { symbol: "D_p", unit: "mm", meaning: "pocket diameter" },
    relief: { symbol: "w_r", unit: "mm", meaning: "width of the relief groove at the pocket's edge" },
    bore: { symbol: "d_sh", unit: "mm", meaning: "bore of the shoulder" },
  },
  results: {
    area: { symbol: "A", unit: "mm2", meaning: "net area of the seat" },
    pressure: { symbol: "p", unit: "MPa", meaning: "pressure on the seat" },
  },
  formulas: { area: "0.9 * pi / 4 * ((D_p - 2 * w_r)^2 - d_sh^2)", pressure: "F_a / A" },
  source: "geometry",
  valid: "flat seat; a shoulder without a ring left is refused",
  examples: [
    {
      given: { force: 50, pocket: 22.12, relief: 0.6, bore: 19.2 },
      gives: { area: 48.8, pressure: 1.03 },
      within: 5e-3,
      source: "geometry: own arithmetic",
    },
  ],
  limits: { force: { from: 0 }, pocket: { above: 0 }, relief: { from: 0 }, bore: { from: 0 } },
  compute: ({ force, pocket, relief, bore }) => {
    const outer = pocket - 2 * relief;
    if (outer <= bore) return { refused: "nothing is left of the seat between its bore and its relief groove" };
    const area = 0.9 * (Math.PI / 4) * (outer ** 2 - bore ** 2);
    return { area, pressure: force / area };
  },
});
