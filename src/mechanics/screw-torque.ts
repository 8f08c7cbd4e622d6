import { type Refusal, refuse } from "../core/calculation.ts";
import { bounded, brief } from "./bounded.ts";

/**
 * Torque to raise and to lower a load on a lead screw, its efficiency, and the friction below which it runs down. A
 * negative lowering torque is what the load itself turns the screw with.
 */
export const screwTorque = bounded({
  name: "screw-torque",
  title: "Torque and efficiency of a lead screw",
  inputs: {
    load: { symbol: "F", unit: "N", meaning: "load on the screw" },
    pitchDiameter: { symbol: "d_m", unit: "mm", meaning: "pitch diameter of the thread" },
    lead: { symbol: "l", unit: "mm", meaning: "lead: pitch times starts" },
    flank: { symbol: "alpha", unit: "deg", meaning: "flank angle: 15 trapezoidal, 14.5 Acme, 0 square" },
    friction: { symbol: "f", unit: "", meaning: "friction in the thread" },
  },
  results: {
    raise: { symbol: "T_raise", unit: "N·mm", meaning: "torque to raise" },
    lower: { symbol: "T_lower", unit: "N·mm", meaning: "torque to lower; negative when the load runs down by itself" },
    critical: { symbol: "f_c", unit: "", meaning: "friction below which the load runs down" },
    efficiency: { symbol: "e", unit: "", meaning: "efficiency when raising" },
    leadAngle: { symbol: "lambda", unit: "deg", meaning: "lead angle at the pitch diameter" },
  },
  formulas: {
    raise: "F * d_m / 2 * (l + pi * f * d_m / cosd(alpha)) / (pi * d_m - f * l / cosd(alpha))",
    lower: "F * d_m / 2 * (pi * f * d_m / cosd(alpha) - l) / (pi * d_m + f * l / cosd(alpha))",
    critical: "l / (pi * d_m) * cosd(alpha)",
    efficiency: "F * l / (2 * pi * T_raise)",
    leadAngle: "atand(l / (pi * d_m))",
  },
  source: "shigley: 8-1 to 8-5",
  valid: "load above 0, friction 0 to 0.5, lead angle below 45 deg, collar friction left out; outside it refuses",
  differs: [
    "screw makers' efficiency tables leave out the flank angle: 0.41 for Tr10x2 at 0.1, where the formula has 0.40",
    "one book (`mott`) prints 1809 lbf in for an example whose own equation gives 1814: the book rounds on the way",
  ],
  examples: [
    {
      given: { load: 6400, pitchDiameter: 30, lead: 8, flank: 0, friction: 0.08 },
      gives: { raise: 15940, lower: -466, critical: 0.0849 },
      within: 1.2e-3,
      source: "shigley: Example 8-1, thread part, from memory",
    },
    {
      given: { load: 100, pitchDiameter: 7, lead: 8, flank: 15, friction: 0.15 },
      gives: { raise: 192.6, lower: -69.1, efficiency: 0.661 },
      within: 8e-4,
      source: "shigley: own arithmetic",
    },
  ],
  limits: {
    load: { above: 0 },
    pitchDiameter: { above: 0 },
    lead: { above: 0 },
    flank: { from: 0, to: 45 },
    friction: { above: 0, below: 0.5 },
  },
  compute: ({ load, pitchDiameter, lead, flank, friction }) => {
    const round = Math.PI * pitchDiameter;
    const cosine = Math.cos((flank * Math.PI) / 180);
    const grip = friction / cosine;
    if (round <= grip * lead) return jams(friction, (round * cosine) / lead);
    if (lead >= round) return tooSteep(lead, round);
    const raise = (((load * pitchDiameter) / 2) * (lead + grip * round)) / (round - grip * lead);
    const lower = (((load * pitchDiameter) / 2) * (grip * round - lead)) / (round + grip * lead);
    const critical = (lead / round) * cosine;
    const leadAngle = (Math.atan(lead / round) * 180) / Math.PI;
    return { raise, lower, critical, efficiency: (load * lead) / (2 * Math.PI * raise), leadAngle };
  },
});

/** Friction at which the thread locks both ways: the torque to raise grows beyond every bound. */
function jams(friction: number, limit: number): Refusal {
  return refuse({
    name: "screw-jams",
    says: `the screw jams: at a friction of ${brief(friction)} no torque raises the load, only below ${brief(limit)}`,
    found: { value: friction, unit: "" },
    limit: { value: limit, unit: "" },
    set: `a friction below ${brief(limit)}: a smaller lead, or a greased nut`,
  });
}

function tooSteep(lead: number, round: number): Refusal {
  return refuse({
    name: "lead-angle-too-steep",
    says: `the lead angle is 45 deg or more: a lead of ${brief(lead)} mm on ${brief(round)} mm round the thread`,
    found: { value: lead, unit: "mm" },
    limit: { value: round, unit: "mm" },
    set: `a lead below ${brief(round)} mm`,
  });
}
