import { describe, expect, test } from "vitest";
import { screwFoot } from "../../../src/parts/screw-foot/index.ts";
import { printerWith } from "../../support/printer.ts";

/** Worked by hand for this project, with the defaults and a layer of 0.2 mm. */
const CASES = [
  { change: {}, a: 17, s_min: -13, s: 4.5, r_z: 0, z_0: -19.9, z_r: 11.1, z_pb: 12.5, z_pl: 24, x_b: 23.06 },
  {
    change: { hub: "up" },
    a: 17,
    s_min: -13,
    s: 11.5,
    r_z: 0,
    z_0: -19.9,
    z_r: 18.1,
    z_pb: 19.5,
    z_pl: 24,
    x_b: 23.06,
  },
  { change: { mount: "on-top" }, s_min: 6, s: 11.4, r_z: -0.1, z_0: 0, z_r: 18, z_pb: 19.4, z_pl: 23.9, x_b: 23.06 },
  {
    change: { mount: "in-corner" },
    a: 17,
    a_x: 17,
    s_min: -13,
    s: 4.5,
    z_0: -19.9,
    z_r: 11.1,
    z_pb: 12.5,
    u_1: 40.06,
    u_2: 56.06,
    l_A: 64.06,
  },
  // On each bolt: 1395 N mm over two pairs 16 mm apart and 30 / 4 N, at right angles 50 / 4 N; against 0.2 x 600 N.
  {
    change: { mount: "on-post" },
    a: 17,
    s_min: 5.5,
    s: 11.5,
    r_z: 0,
    z_0: 6.5,
    z_r: 18.1,
    z_pb: 19.5,
    M_h: 1395,
    F_sl: 52.6,
    u_g: 0.44,
  },
  {
    change: { mount: "under" },
    a: 17,
    s_min: -25,
    s: 4.4,
    r_z: -0.1,
    z_0: -30,
    z_r: 11,
    z_pb: 12.4,
    z_pl: 23.9,
    x_b: 16.06,
    L_bolt: 16,
    sigma: 3.08,
    T_e: 158.4,
  },
  { change: { style: "walled" }, a: 22.5, s: 4.5, z_0: -19.9, z_post: 31.5, c_min: 2.5 },
  { change: { style: "bridged" }, a: 28, s: 4.5, x_b: 38.25, w_half: 46.25, z_post: 31.5, t_br: 9.6 },
  {
    change: {},
    w_half: 31.06,
    z_w: -2,
    z_ss: 16,
    D_p: 22.12,
    R_h: 16.06,
    d_p: 6.6,
    d_sh: 19.2,
    w_ring: 1.46,
    g_r: 1.4,
    L_bolt: 12,
    c_b: 0,
    A_s: 48.8,
    p_seat: 1.03,
    P0: 43,
    s_0: 31.9,
    F_lim: 342.5,
    F_hold: 534,
    k_hold: 10.7,
    M: 1702,
    sigma: 0.33,
    T_r: 218.9,
    T_e: 109.4,
    delta: 0.006,
  },
  { change: { hub: "up" }, z_ss: 32 },
  { change: { mount: "on-top" }, T_e: 35.9 },
  { change: { mount: "in-corner", cornerAngle: 95 }, x_K: -15.578, u_1: 38.638 },
] as const;

/** The last digit that the worked figure prints. */
function within(figure: number): number {
  const [, decimals = ""] = String(figure).split(".");
  return 0.51 * 10 ** -decimals.length;
}

describe.each(CASES)("a foot with $change", ({ change, ...figures }) => {
  const { dimensions, diagnostics } = screwFoot.design(screwFoot.schema.parse(change), printerWith());

  test.each(Object.entries(figures))("%s is %d", (symbol, figure) => {
    const value = dimensions.find((dimension) => dimension.symbol === symbol)?.value ?? Number.NaN;
    // A plate's end is written to the nearest 0.01, twice rounded where it is doubled.
    expect(Math.abs(value - Number(figure)), `${value}`).toBeLessThanOrEqual(within(Number(figure)));
  });

  test("it is feasible, with no warning and two notes of its own", () => {
    expect(diagnostics.filter(({ level }) => level !== "note")).toEqual([]);
    const notes = diagnostics.map(({ name }) => name).filter((name) => name !== "typical-value-not-measured");
    expect(notes.sort()).toEqual(["loop-trapped-by-foot", "thrust-hangs-on-set-screws"]);
  });
});
