import { bounded } from "./bounded.ts";

/** Heat that a hot plate loses per degree above the air. */
export const heatLoss = bounded({
  name: "heat-loss",
  title: "Heat loss of a plate",
  inputs: {
    topFilm: { symbol: "h_1", unit: "W/(m2·K)", meaning: "bare top, radiation included: 9 to 11" },
    top: { symbol: "A_1", unit: "m2", meaning: "area of the top" },
    bottomFilm: { symbol: "h_2", unit: "W/(m2·K)", meaning: "underside: 2 to 4 insulated, 9 bare" },
    bottom: { symbol: "A_2", unit: "m2", meaning: "area of the underside" },
  },
  results: { loss: { symbol: "UA", unit: "W/K", meaning: "heat loss per degree" } },
  formulas: { loss: "h_1 * A_1 + h_2 * A_2" },
  source: "incropera: free convection and radiation of horizontal plates",
  valid: "still air, plate up to 250 °C; a draught doubles it",
  examples: [
    {
      given: { topFilm: 10, top: 0.209, bottomFilm: 3, bottom: 0.209 },
      gives: { loss: 2.717 },
      within: 1e-9,
      source: "incropera: own arithmetic",
    },
  ],
  limits: { topFilm: { from: 0 }, top: { from: 0 }, bottomFilm: { from: 0 }, bottom: { from: 0 } },
  compute: ({ topFilm, top, bottomFilm, bottom }) => ({ loss: topFilm * top + bottomFilm * bottom }),
});
