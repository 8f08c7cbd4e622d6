import { bounded, brief } from "./bounded.ts";

/**
 * Height of a bearing's seat under a pulley, for the hub pointing up and down: the belt plane less everything stacked
 * between the seat and the middle of the belt.
 */
export const beltSeat = bounded({
  name: "belt-seat",
  title: "Height of a bearing seat from its belt plane",
  inputs: {
    plane: { symbol: "z_belt", unit: "mm", meaning: "belt plane: height of the middle of the belt" },
    pulley: { symbol: "H_p", unit: "mm", meaning: "pulley height, hub included" },
    groove: { symbol: "w_t", unit: "mm", meaning: "width between the flanges" },
    flange: { symbol: "t_f", unit: "mm", meaning: "flange thickness" },
    hub: { symbol: "h_hub", unit: "mm", meaning: "hub length" },
    washers: { symbol: "t_w", unit: "mm", meaning: "washers between bearing and pulley, summed" },
    collar: { symbol: "t_c", unit: "mm", meaning: "clamp collar in the stack, else 0" },
    bearing: { symbol: "B", unit: "mm", meaning: "bearing width" },
  },
  results: {
    offsetUp: { symbol: "e_up", unit: "mm", meaning: "pulley's lower face to the belt plane, hub up" },
    offsetDown: { symbol: "e_down", unit: "mm", meaning: "pulley's lower face to the belt plane, hub down" },
    seatUp: { symbol: "s_up", unit: "mm", meaning: "seat height, hub up" },
    seatDown: { symbol: "s_down", unit: "mm", meaning: "seat height, hub down" },
  },
  formulas: {
    offsetUp: "t_f + w_t / 2",
    offsetDown: "H_p - e_up",
    seatUp: "z_belt - e_up - t_w - t_c - B",
    seatDown: "z_belt - e_down - t_w - t_c - B",
  },
  source: "geometry",
  valid: "vertical screw, flanged pulley with equal flanges; parts that miss the pulley height by over 0.3 are refused",
  examples: [
    {
      given: { plane: 24, pulley: 16, groove: 7, flange: 1, hub: 7, washers: 1, collar: 0, bearing: 7 },
      gives: { offsetUp: 4.5, offsetDown: 11.5, seatUp: 11.5, seatDown: 4.5 },
      within: 1e-9,
      source: "geometry: own arithmetic",
    },
  ],
  limits: {
    pulley: { above: 0 },
    groove: { above: 0 },
    flange: { from: 0 },
    hub: { from: 0 },
    washers: { from: 0 },
    collar: { from: 0 },
    bearing: { above: 0 },
  },
  compute: ({ plane, pulley, groove, flange, hub, washers, collar, bearing }) => {
    const off = pulley - (hub + 2 * flange + groove);
    if (Math.abs(off) > 0.3 + 1e-9) {
      return {
        refused: `H_p is ${brief(pulley)}, and hub, flanges and w_t make ${brief(pulley - off)}: measure again`,
      };
    }
    const offsetUp = flange + groove / 2;
    const offsetDown = pulley - offsetUp;
    const below = washers + collar + bearing;
    return { offsetUp, offsetDown, seatUp: plane - offsetUp - below, seatDown: plane - offsetDown - below };
  },
});
