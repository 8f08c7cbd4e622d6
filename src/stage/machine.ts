import type { Pulley } from "../catalogue/pulleys.ts";
import type { Diagnostic, Path } from "../core/diagnostic.ts";
import type { Item } from "../core/item.ts";
import type { Vec3 } from "../geometry/mesh.ts";
import type { BeltLoop } from "../mechanics/belt-loop.ts";
import type { MeshedNode } from "../mechanics/idler-duties.ts";
import type { SeatCandidate } from "../mechanics/seat-candidates.ts";
import type { StockLoop } from "../mechanics/stock-loops.ts";
import type { Printer } from "../printing/printer.ts";
import type { Fact, Section } from "./fact.ts";
import type { Plan } from "./schema/index.ts";

/** A pulley on the motor's shaft, with the heights that follow from its place in the stack. mm over the datum. */
export interface MotorPulley {
  readonly loop: string;
  readonly pulley: Item<Pulley>;
  readonly hub: "up" | "down";
  readonly bottom: number;
  readonly top: number;
  /** Middle of the belt. */
  readonly plane: number;
}

/** Where a part stands: its own frame turned about z by `angle` (deg, counter-clockwise) and then moved. */
export interface Placement {
  readonly origin: Vec3;
  readonly angle: number;
  /** Stood up before that, about x by 90 deg: its own y points up, and its own z to -y. */
  readonly upright?: true;
}

/** A part of the machine that is printed. */
export interface PlacedPart {
  /** Unique in the machine; names its files: `foot-a`. */
  readonly name: string;
  readonly family: string;
  /** As its family's schema reads them. */
  readonly parameters: Readonly<Record<string, unknown>>;
  /** What the plan derived; the rest comes from the plan's blocks of parameters or is the family's default. */
  readonly derived: readonly string[];
  /** Where in the plan it comes from. */
  readonly path: Path;
  /** Where in the plan each parameter comes from that is no default, where that is known. */
  readonly places?: Readonly<Record<string, Path>>;
  readonly placement: Placement;
  /** Whether it rises with the stage. */
  readonly moves: boolean;
}

/** Returns the printer that prints the parts of a family. */
export type PrinterOf = (family: string) => Printer;

/** What was chosen for the foot of one screw. */
export interface FootChoice {
  readonly screw: string;
  /** The loop that turns the screw. */
  readonly loop: string;
  /** Bar that carries the foot. */
  readonly bar: string;
  readonly hub: "up" | "down";
  /** Height of the bearing's seat over the bar's top, as printed; and over the datum. */
  readonly seat: number;
  readonly seatOverDatum: number;
  /** Ring under the bearing, 0 for none. */
  readonly shim: number;
  /** How far each newton along the screw makes the seat sink after years, mm; 0 where it carries nothing. */
  readonly give: number;
  /** Height of the belt's middle on this pulley over the datum, after printing and shims. */
  readonly plane: number;
  /** How far that is over the plane of the loop. */
  readonly residual: number;
  /** Every way that was tried, the chosen one first, the others with why they lost. */
  readonly candidates: readonly Candidate[];
  readonly part: PlacedPart;
}

export interface Candidate extends SeatCandidate {
  /** The rings of the stack by their names, from the bearing up. */
  readonly rings: readonly string[];
}

/** A pulley or idler of a loop, with the body that its belt runs on. mm. */
export interface BeltNode extends MeshedNode {
  readonly kind: "motor" | "screw" | "idler";
  /** Radius of its flanges. */
  readonly flange: number;
  /** Width between the flanges, and what stands beyond it above and below: a flange, or the ring of an idler. */
  readonly groove: number;
  readonly rim: number;
  /** Pitch of its teeth; an idler's is its belt's. */
  readonly pitch: number;
  /** Diameter that a belt runs on, of an idler. */
  readonly runs?: number;
}

/** Air between a belt or its pulleys and what they pass, and the least that it may be. mm. */
export interface BeltGap {
  readonly defect: "belts-too-close" | "pulley-bodies-collide" | "spans-of-loop-too-close" | PassedTooNear;
  /** What it is between: `low, A to B` and `screw C`. */
  readonly between: readonly [string, string];
  readonly gap: number;
  /** Below this it is an error, and a warning. */
  readonly error: number;
  readonly warning: number;
  readonly from: Fact["from"];
}

type PassedTooNear = "belt-too-near-foreign-flange" | "belt-too-near-upright" | "belt-too-near-bar";

/** What was found for one loop, in plan. */
export interface LoopChoice {
  readonly loop: string;
  /** In the order in which the belt meets them, counter-clockwise, where the chosen loop puts them. */
  readonly nodes: readonly BeltNode[];
  readonly belt: BeltLoop;
  /** Teeth that the belt lies on, node by node; undefined for a smooth one. */
  readonly meshes: readonly (number | undefined)[];
  /** Length with every node where the plan has it. */
  readonly nominal: number;
  readonly stock: readonly StockLoop[];
  /** Length of the loop to buy; undefined when none fits. */
  readonly bought: number | undefined;
  /** The node that slides to tighten the loop, and how far it stands from its place in the plan. */
  readonly slid: { readonly node: string; readonly at: number } | undefined;
  /** What it passes, the narrowest gap of each kind first. */
  readonly gaps: readonly BeltGap[];
}

/** What each screw carries at one time, N; on four screws at most and at least. */
export interface SharedLoad {
  readonly name: string;
  /** What all of them carry together. */
  readonly weight: number;
  readonly shares: Readonly<Record<string, number>>;
  readonly least: Readonly<Record<string, number>>;
  /** Whether a person leans on the plate; what lasts leaves these out. */
  readonly leaned: boolean;
}

/** Weights and their shares on the screws, N, by name of the case and of the screw. */
export interface LoadCases {
  readonly weight: number;
  readonly cases: readonly SharedLoad[];
  /** The largest share of each screw over all cases. */
  readonly worst: Readonly<Record<string, number>>;
  /** Force of the motor at stall on one screw, taken by all of them together, N. */
  readonly crash: number;
}

/** A whole machine worked out from its plan. With an error among the diagnostics some of it may be missing. */
export interface Stage {
  readonly plan: Plan;
  readonly pulleys: readonly MotorPulley[];
  readonly loops: readonly LoopChoice[];
  readonly loads: LoadCases | undefined;
  readonly feet: readonly FootChoice[];
  readonly parts: readonly PlacedPart[];
  /** The report, block by block. */
  readonly sections: readonly Section[];
  /** Their paths lead into the plan. */
  readonly diagnostics: readonly Diagnostic[];
  /** Whether things were left out since the plan, or its file, does not say what they are. */
  readonly partly?: boolean;
}
