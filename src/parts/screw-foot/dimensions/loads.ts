import type { Parameters } from "../parameters.ts";
import { mm, of } from "./entry.ts";

const beside = ({ offset, bar }: Parameters) => offset > bar.values.width / 2;

function lever(given: Parameters): string {
  if (given.mount === "on-top") return beside(given) ? "b - W / 2" : "0";
  return given.mount === "under" ? "a" : "max(a, a_x)";
}

function moment(given: Parameters): string {
  const height =
    { under: "z_pl + H", "on-top": beside(given) ? "z_pl" : "0" }[given.mount as "under"] ?? "z_pl - (z_r + z_0) / 2";
  return `F_t * l_r + F_r * abs(${height})`;
}

function heelMoment({ mount }: Parameters): string {
  if (mount === "under") return "F_t * (max(a, a_x) + W) + F_r * abs(z_pl + H)";
  if (mount === "on-top") return "F_t * max(0, b - W / 2) + F_r * abs(z_pl)";
  return mount === "on-post"
    ? "F_t * (a + m_bar / 2) + F_r * abs(z_pl - z_h)"
    : "F_t * max(a, a_x) + F_r * abs(z_pl - z_h)";
}

const standsFree = ({ mount }: Parameters) => mount === "on-top" || mount === "under";
const COLUMN = "F_r * (z_pl - z_0) * 4 * R_h / (pi * (R_h^4 - (d_sh / 2)^4)) + F_t / (pi * (R_h^2 - (d_sh / 2)^2))";
const SINK = "(4 * F_t * l_r^3 / (E * b_r * h_r^3) + 1.2 * F_t * l_r / (E / 2.7 * b_r * h_r)) * f_c";

/** Sink grows as the load does, so a share of the load sinks by that share. */
function sinkDifference({ steadyLoad, lightestLoad, otherSink }: Parameters): string {
  const under = (load: string) => `delta * ${load} / max(F_t, 0.000001)`;
  const own = steadyLoad === undefined ? "delta" : under("F_st");
  if (otherSink !== undefined) return `max(0, ${own} - delta_o)`;
  return lightestLoad === undefined
    ? '"0 as long as neither otherSink nor lightestLoad is given"'
    : `max(0, ${own} - ${under("F_min")})`;
}

const HEELS = {
  "on-side": "max(z_0, -H)",
  "in-corner": "max(z_0, -H)",
  "on-top": "0",
  under: "-H",
  "on-post": "z_0 + m_e + s_b / 2",
};

/** What the foot carries, and what that does to the plastic and the bolts. */
export const loadDimensions = {
  thrust: of("N", "F_t", "thrust that the foot takes", ({ thrust }) => (thrust === "hung" ? "0" : "F_a"), "statics"),
  lever: mm("l_r", "lever of the thrust about the root", lever, "geometry"),
  rootHeight: mm(
    "h_r",
    "root, the way it bends",
    ({ mount }) => (mount === "under" || mount === "on-top" ? "t_bp" : "z_r - z_0"),
    "geometry",
  ),
  moment: of("N·mm", "M", "moment at the root", moment, "statics"),
  rootWidth: mm(
    "b_r",
    "width of the root",
    ({ mount }) => (mount === "under" ? "2 * (R_h + (R_x + D_w / 2 + 3 - R_h) * a / (a + W / 2))" : "2 * R_h"),
    "geometry",
  ),
  stress: of("MPa", "sigma", "bending stress at the root, along the layers", "6 * M / (b_r * h_r^2)", "shigley: 3"),
  columnStress: of(
    "MPa",
    "sigma_c",
    "stress at the column's foot, across the layers",
    (given) => (standsFree(given) ? COLUMN : "0"),
    "shigley: 3",
  ),
  stressUse: of("", "u_s", "share of the sustained stress", "max(sigma / sigma_in, sigma_c / sigma_x)", "statics"),
  sink: mm("delta", "sink at the axis after years", SINK, "shigley: 4 and Table A-9"),
  sinkDifference: mm("d_delta", "sink over that of the foot that sinks least", sinkDifference, "statics"),
  seatArea: of(
    "mm2",
    "A_s",
    "net seat of the bearing",
    "max(0, 0.9 * pi / 4 * ((D_p - 2 * w_rel)^2 - d_sh^2))",
    "geometry",
  ),
  seatPressure: of(
    "MPa",
    "p_seat",
    "pressure on the seat",
    ({ thrust }) => (thrust === "tip" ? "0" : "F_t / A_s"),
    "statics",
  ),
  heel: mm("z_h", "heel about which the foot tips", ({ mount }) => HEELS[mount], "statics"),
  heelMoment: of("N·mm", "M_h", "moment about the heel", heelMoment, "statics"),
  tension: of(
    "N",
    "T_r",
    "pull on the most loaded row of bolts",
    (given) =>
      standsFree(given)
        ? "M_h / (W / 2)"
        : given.mount === "on-post"
          ? "0"
          : '"M_h l / sum of l^2, l being a row\'s height over the heel"',
    "statics",
  ),
  tensionEach: of("N", "T_e", "pull on one bolt", "T_r / 2", "statics"),
  slide: of(
    "N",
    "F_sl",
    "on a post: force that tries to slide the worst bolt's seat",
    ({ mount }) => (mount === "on-post" ? "sqrt((M_h / (s_b * 2) + F_r / 4)^2 + (F_t / 4)^2)" : "0"),
    "statics",
  ),
  gripUse: of(
    "",
    "u_g",
    "share of the bolts' clamp, on a post of its friction",
    ({ mount }) => (mount === "on-post" ? "F_sl / (0.2 * F_c)" : "T_e / F_c"),
    "statics",
  ),
};
