import * as m from "../../src/mechanics/index.ts";
import { SEARCHES, type Search } from "../../src/stage/searches.ts";
import * as given from "./solver-givens.ts";

/** A calculation that no single formula gives: a search, a list or a verdict. The pages and the kit read it. */
export interface Solver extends Omit<Search, "again"> {
  readonly examples: readonly {
    readonly says: string;
    readonly computed: () => number | string;
    /** What the example's source has: a number with the digits that count, or a word. */
    readonly printed: string;
  }[];
}

export const SOLVERS: readonly Solver[] = [
  {
    ...SEARCHES["belt-loop"],
    examples: [
      {
        says: "40 and 40 teeth of 2 mm, 300 apart",
        computed: () => (m.beltLoop(given.PAIR) as m.BeltLoop).length,
        printed: "680.0",
      },
      {
        says: "20, 40 and 40 teeth",
        computed: () => (m.beltLoop(given.THREE) as m.BeltLoop).length,
        printed: "955.5333",
      },
      {
        says: "the same with an idler outside",
        computed: () => (m.beltLoop(given.FOUR) as m.BeltLoop).length,
        printed: "958.8586",
      },
    ],
  },
  {
    name: "idler-duties",
    title: "Which idlers may be parked",
    takes: "the nodes of a loop, toothed ones with their teeth",
    gives: "for each smooth idler whether the loop still meshes without it, and why not",
    how: "the loop is solved without the idler; every pulley must keep 6 teeth in mesh, or as many as it has with it",
    source: "belt-makers: drive design manuals",
    valid: "loops that are sound; others are refused with their reason",
    examples: [
      {
        says: "the idler beside a motor of 20 teeth",
        computed: () => (m.idlerDuties(given.FOUR) as readonly m.IdlerDuty[])[0]?.says ?? "",
        printed: "without it motor has 3.6 teeth in mesh",
      },
    ],
  },
  {
    ...SEARCHES["slide-for-length"],
    examples: [
      {
        says: "two of 40 teeth, 300 apart, a belt of 690",
        computed: () => (m.slideForLength(given.PAIR, given.SLIDE, 690) as m.SlidePosition).at,
        printed: "5.000",
      },
    ],
  },
  {
    name: "stock-loops",
    title: "Stock belts for a loop",
    takes: "the nodes, a slide, the pitch, the lengths in stock",
    gives: "the stock belts within 4 % of the nominal length, those that fit first, each with its place on the slide",
    how: "slide-for-length for each; a length that is no whole number of teeth keeps that reason",
    source: "geometry",
    valid: "a sound loop with a stock length in reach; others are refused",
    examples: [
      {
        says: "two of 40 teeth, 300 apart, from 672, 680 and 690",
        computed: () =>
          (m.stockLoops(given.PAIR, given.SLIDE, 2, [672, 690, 680]) as readonly m.StockLoop[])[0]?.teeth ?? 0,
        printed: "340",
      },
    ],
  },
  {
    name: "seat-candidates",
    title: "Ways to put a pulley on its seat",
    takes: "belt plane, pulley, bearing and collar in mm, the washer stacks that may be used, lowest and highest seat",
    gives: "each hub direction with each stack: seat in mm, and why it is out",
    how: "belt-seat for each; those that fit first, then the lowest seat, then the fewest washers",
    source: "geometry",
    valid: "pulley data that agree with each other; others are refused",
    examples: [
      {
        says: "plane 24, one washer of 1, seats from 4 to 60",
        computed: () =>
          (m.seatCandidates({ ...given.SEATS, lowest: 4, highest: 60 }) as readonly m.SeatCandidate[])[0]?.seat ?? 0,
        printed: "4.5",
      },
    ],
  },
  {
    name: "shim-for-seat",
    title: "Shim under a bearing",
    takes: "seat, bed, first layer and layer in mm, the shims in stock",
    gives: "seat as printed, shim and what is left over, in mm",
    how: "up to 0.1 mm off nothing is done; beyond, the boundary below and the shim nearest to the shortfall",
    source: "geometry",
    valid: "what seat-on-layer takes; a shim only raises",
    examples: [
      {
        says: "seat 11.35 on layers of 0.4, first 0.3",
        computed: () =>
          given.numberOf(
            m.shimForSeat({ seat: 11.35, bed: 0, first: 0.3, layer: 0.4 }, [0.1, 0.2, 0.3, 0.5, 1]),
            "shim",
          ),
        printed: "0.2",
      },
    ],
  },
  {
    name: "screws-in-step",
    title: "Whether all screws lift alike",
    takes: "lead, teeth at screw and motor, hand and side of the belt of each screw",
    gives: "the lift per motor turn that all share, in mm",
    how: "l z_m / z_s equal to 1e-9, one hand, one side of the belt",
    source: "geometry",
    valid: "no slip; screws that lift unequally or turn against each other are refused by name",
    examples: [
      {
        says: "lead 8, 40 and 20 teeth",
        computed: () => given.numberOf(m.screwsInStep([given.SCREW]), "lift"),
        printed: "4",
      },
    ],
  },
  {
    name: "friendly-layers",
    title: "Layer heights of whole full steps",
    takes: "lift of a full step, thinnest and thickest layer in mm",
    gives: "the layer heights in mm",
    how: "whole multiples of the full step",
    source: "geometry",
    valid: "a range that is one; else the list is empty",
    examples: [
      { says: "0.02 a step, 0.1 to 0.2", computed: () => m.friendlyLayers(0.02, 0.1, 0.2).length, printed: "6" },
    ],
  },
  {
    name: "screw-locking",
    title: "Whether a screw holds its load without power",
    takes: "the critical friction of screw-torque, the least and the highest friction of the nut",
    gives: "locks, may run down, or runs down",
    how: "locks when the least friction is 1.3 times the critical one, runs down when the highest is not above it",
    source: "shigley: 8-2, with a margin from common practice",
    valid: "a range of friction above 0; others are refused",
    examples: [
      {
        says: "Tr8x2, dry brass 0.15 to 0.2",
        computed: () => String(m.screwLocking(0.08785, 0.15, 0.2)),
        printed: "locks",
      },
      {
        says: "Tr8x8(P2), the same nut",
        computed: () => String(m.screwLocking(0.3514, 0.15, 0.2)),
        printed: "runs down",
      },
    ],
  },
  {
    name: "four-screw-bounds",
    title: "Bounds of the loads on four screws",
    takes: "the places of the screws in mm, the weight in N, the place where it acts",
    gives: "least and most load of each in N, and whether the weight lies outside",
    how: "load-share of every three of them; four share a weight by a twist that nobody knows",
    source: "statics",
    valid: "rigid stage; screws of which no three make a sound triangle are refused",
    examples: [
      {
        says: "40 N in the middle of 400 by 300",
        computed: () =>
          (m.fourScrewBounds(given.CORNERS, 40, { x: 200, y: 150 }) as m.FourScrewBounds).bounds[0]?.most ?? 0,
        printed: "20.0",
      },
    ],
  },
  {
    name: "screw-loads",
    title: "Load on three screws that only push",
    takes: "three screws by name and place in mm, the weight in N, the place in mm where it acts",
    gives: "the load on each screw in N, none below zero",
    how: "load-share; a load below zero is refused",
    source: "statics",
    valid:
      "rigid stage, vertical loads; screws in line and a centre of mass outside their triangle are refused by name",
    examples: [
      {
        says: "30 N on a triangle of 300 by 260",
        computed: () => (m.screwLoads(given.TRIANGLE, 30, { x: 75, y: 60 }) as readonly m.ScrewLoad[])[2]?.load ?? 0,
        printed: "6.92",
      },
    ],
  },
  {
    name: "centre-of-mass",
    title: "Weight of several masses and where it acts",
    takes: "masses in kg and their places in mm",
    gives: "weight in N, place in mm",
    how: "sum of m x over sum of m; weight = 9.80665 sum of m",
    source: "statics",
    valid: "masses of 0 kg and more, at least one above; others are refused",
    examples: [
      {
        says: "3 kg at 0 and 1 kg at 400",
        computed: () => given.numberOf(m.centreOfMass([given.mass(3, 0), given.mass(1, 400)]), "x"),
        printed: "100",
      },
    ],
  },
  {
    ...SEARCHES["summed-pull"],
    examples: [
      {
        says: "3 N to the right and 4 N up",
        computed: () => given.numberOf(m.summedPull([given.arrow(0, 3), given.arrow(90, 4)]), "pull"),
        printed: "5.0",
      },
    ],
  },
  {
    name: "tram-plane",
    title: "Plane nearest to probed heights",
    takes: "places and heights of three probes or more, in mm",
    gives: "height at the middle, slopes, and the largest distance of a probe from it",
    how: "least squares",
    source: "geometry",
    valid: "probes whose spread across is at least 0.05 of that along; others are refused",
    examples: [
      {
        says: "0.3, -0.1, 0.2 and 0.05 on the corners of a square: the twist that is left",
        computed: () => given.numberOf(m.tramPlane(given.probes(0.3, -0.1, 0.2, 0.05)), "worst"),
        printed: "0.1375",
      },
    ],
  },
  {
    name: "tram-twist",
    title: "Twist of a plate over four mounts",
    takes: "places and heights of four probes or more, and the places of the four mounts, in mm",
    gives: "how far each mount lies off the plane nearest to the four, and the largest of it, in mm",
    how: "z = a + b u + c v + d u v by least squares, u along one side of the mounts and v across it; plate-twist of it",
    source: "geometry",
    valid: "probes that show the twist, as one near each mount does; others, and other than four mounts, are refused",
    examples: [
      {
        says: "0.1, 0, 0.1 and 0 on the corners of a square",
        computed: () => given.numberOf(m.tramTwist(given.probes(0.1, 0, 0.1, 0), given.probes(0, 0, 0, 0)), "worst"),
        printed: "0.05",
      },
    ],
  },
  {
    name: "tram-moves",
    title: "Turns that level a plate",
    takes: "the plane, the mounts with pitch and range in mm, the name of the fixed one",
    gives: "move in mm and clockwise turns of each",
    how:
      "the plate is brought to the fixed mount's height, or to the nearest height that all mounts reach; each moves by " +
      "that less its own; turns = -move / pitch, clockwise lowers",
    source: "geometry",
    valid:
      "right-hand threads; where no height is in the reach of all mounts, each is refused by name with what it lacks",
    examples: [
      {
        says: "a plate 0.01 per mm high to the right, a mount at 100, pitch 0.8",
        computed: () => {
          const moves = m.tramMoves(given.TILTED, [given.MOUNT, { ...given.MOUNT, name: "free", x: 100 }], "fixed");
          return "refused" in moves ? moves.refused : (moves[1]?.clockwise ?? 0);
        },
        printed: "1.25",
      },
    ],
  },
  {
    name: "slot-bolt",
    title: "Bolt for a plate on a slot nut",
    takes: "plate, washer, bolt, slot and stock lengths in mm, the layer when the bolt stands upright in print",
    gives: "length, counterbore and floor in mm",
    how:
      "the shortest stock length in the window of slot-bolt-window; else the longest that does not bottom, with a " +
      "counterbore that puts it into the middle",
    source: "common-practice",
    valid: "a floor of at least 3 mm and 0.6 d; a slot too shallow, a stock too long and a thin floor are refused",
    examples: [
      {
        says: "20 series, plate 8: counterbore",
        computed: () => given.numberOf(m.slotBolt({ ...given.SLOT, plate: 8 }), "counterbore"),
        printed: "1.8",
      },
    ],
  },
];
