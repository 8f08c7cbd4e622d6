import type { Parameters } from "../parameters.ts";
import { layersUpTo, mm } from "./entry.ts";

const free = ({ mount }: Parameters) => mount !== "on-top" && mount !== "under";

function lowest({ mount, thrust, offset, bar, screw, endDiameter = screw.values.diameter }: Parameters): string {
  const over = offset < bar.values.width / 2 + endDiameter / 2 + 1;
  if (mount === "on-side" || mount === "in-corner") return "-H + t_floor + 2 + l_pad";
  if (mount === "on-top") return over && thrust !== "tip" ? "max(t_floor, l_tip + l_free)" : "t_floor + l_pad";
  return mount === "on-post" ? `z_low + ${layersUpTo("(t_floor + l_pad)")}` : "-H - t_bp + t_floor + l_pad";
}

function bedLevel({ mount }: Parameters): string {
  if (mount === "on-top") return "0";
  if (mount === "under") return "-H - t_bp";
  if (mount === "on-post") return `s_w - (${layersUpTo("(t_floor + l_pad)")})`;
  return "s_w - max(first, first + down(s_w + H - first, layer))";
}

const rings = ({ washers }: Parameters) =>
  washers?.map(({ values }) => values.thickness).join(" + ") || (washers ? "0" : "1");

/** Heights on the axis, from the bed level to the pulley's top and what stands round it. */
export const stackDimensions = {
  washerStack: mm("t_sum", "rings between bearing and pulley", rings, "geometry"),
  collarHeight: mm(
    "t_c",
    "clamp collar on the rings",
    ({ thrust }) => (thrust === "collar" ? "w_collar" : "0"),
    "geometry",
  ),
  offsetUp: mm("e_up", "pulley's lower face to the belt, hub up", "t_f + w_t / 2", "geometry"),
  offsetDown: mm("e_down", "pulley's lower face to the belt, hub down", "H_p - e_up", "geometry"),
  offsetUsed: mm(
    "e",
    "pulley's lower face to the belt",
    '"e_up with the hub up, e_down with the hub down"',
    "geometry",
  ),
  lowestSeat: mm("s_min", "lowest seat that the floor allows", lowest),
  seatWanted: mm("s_w", "seat that puts the belt in its plane", "z_belt - e - t_sum - t_c - B", "geometry"),
  bed: mm("z_0", "level of the bed face", bedLevel),
  seat: mm("s", "seat of the bearing, on a layer", (given) =>
    free(given) ? "s_w" : '"nearest layer boundary; a tie goes down, since a shim can only raise"',
  ),
  shim: mm("t_shim", "shim ring under the bearing", (given) =>
    free(given) ? "0" : '"stock ring that comes nearest, when the seat is off by more than 0.1"',
  ),
  residual: mm("r_z", "belt above its plane after shims", "s + t_shim - s_w", "geometry"),
  rim: mm("z_r", "rim of the pocket", "s + d_p", "geometry"),
  bearingTop: mm("z_bt", "top of the bearing", "s + t_shim + B", "geometry"),
  pulleyBottom: mm("z_pb", "lower face of the pulley", "z_bt + t_sum + t_c", "geometry"),
  pulleyTop: mm("z_pt", "upper face of the pulley", "z_pb + H_p", "geometry"),
  plane: mm("z_pl", "middle of the belt as built", "z_pb + e", "geometry"),
  setScrewHeight: mm(
    "z_ss",
    "set screws of the pulley",
    '"z_pb + H_p - h_ss with the hub up, z_pb + h_ss with the hub down"',
    "geometry",
  ),
  rimGap: mm("g_r", "rim to the pulley", "z_pb - z_r", "geometry"),
  padDepth: mm("l_pad", "seat to the pad under the screw's tip", ({ thrust }) =>
    thrust === "tip" ? layersUpTo("(l_tip + 3)") : "0",
  ),
  postTop: mm("z_post", "top of a wall or of the bridge's posts", "z_pt + 3"),
  bridgeThickness: mm("t_br", "thickness of the bridge", layersUpTo("max(8, d_p + 3)")),
  bridgeSeat: mm("z_bs", "seat of the bridge's bearing", "z_post + t_br - d_p", "geometry"),
  capBore: mm("d_cap", "bore of the bearing's cap", "up(D2, 0.5)"),
  capTop: mm("z_cap", "top of the bearing's cap", "z_bt + 3", "geometry"),
  capGap: mm(
    "g_cap",
    "cap to what turns over it",
    '"rings, plus the hub where it turns inside the bore, less the cap"',
    "geometry",
  ),
  capCircle: mm("D_cap", "circle of the cap's screws", "D_p + 9"),
};
