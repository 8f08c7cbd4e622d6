import { distance } from "../../mechanics/point.ts";
import type { Section, Topic } from "../fact.ts";
import { besidesPlaces, isTouched, type Unread } from "../frame/unread.ts";
import type { Stage } from "../machine.ts";
import type { DesignedPart } from "../parts/design-of.ts";
import type { Plan } from "../schema/index.ts";
import { arms } from "./arms.ts";
import { drive } from "./drive.ts";
import { fasteners } from "./fasteners.ts";
import { growth } from "./growth.ts";
import { heater } from "./heater.ts";
import { inStep } from "./in-step.ts";
import { screwsOf } from "./index.ts";
import { lowestPart } from "./lowest-part.ts";
import { mounts } from "./mounts.ts";
import { nutJoints } from "./nut-joints.ts";
import { plateLayout } from "./plate-layout.ts";
import { type ScrewDrive, screwDrives } from "./screw-drives.ts";
import { screws } from "./screws.ts";
import { wheels } from "./wheels.ts";

/** The stage as the topics of its structure see it. */
export interface SharedStage extends Omit<Stage, "sections" | "diagnostics"> {
  readonly drives: readonly ScrewDrive[];
  readonly designed: readonly DesignedPart[];
  /** Distance of a screw from the line through the two others, mm; 0 where there are not three. */
  readonly height: (screw: string) => number;
}

interface Part {
  /** Keys of the plan without which nothing certain comes of it. */
  readonly reads: readonly (keyof Plan)[];
  /** Where the screws stand is no matter. */
  readonly placeless?: true;
  readonly from: (stage: SharedStage, unread: Unread) => Topic;
}

const plain = (section: Section): Topic => ({ sections: [section], diagnostics: [] });
const WEIGHTS = ["screws", "bars", "plate", "print", "masses", "carriages", "carriage"] as const;

const PARTS: readonly Part[] = [
  { reads: [], from: ({ plan }, unread) => ({ sections: [], diagnostics: inStep(plan, unread) }) },
  { reads: ["screws", "foot", "motor", "travel", "layers"], placeless: true, from: drive },
  { reads: ["screws", "foot", "motor", "travel"], from: screws },
  { reads: ["screws", "bars", "travel"], from: ({ plan }) => nutJoints(plan) },
  { reads: ["bars", "travel"], placeless: true, from: ({ plan }) => ({ sections: [], diagnostics: lowestPart(plan) }) },
  { reads: [...WEIGHTS, "mount", "layers"], from: arms },
  { reads: [...WEIGHTS, "printers"], from: (stage) => plain(wheels(stage)) },
  { reads: ["plate", "mount", "print", "printers"], from: mounts },
  { reads: ["plate"], from: ({ plan }) => plain(growth(plan)) },
  { reads: ["plate", "mount"], from: plateLayout },
  { reads: ["plate", "mount", "printers"], from: heater },
  { reads: ["plate", "mount", "foot", "carriage", "printers"], from: (stage) => plain(fasteners(stage)) },
];

/** Returns everything about drive, screws, arms, wheels, mounts and heater: numbers with limits, and what is wrong. */
export function structure(
  stage: Omit<Stage, "sections" | "diagnostics">,
  designed: readonly DesignedPart[],
  unread: Unread = [],
): Topic {
  const { plan } = stage;
  const shared = { ...stage, designed, drives: screwDrives(plan), height: heightOf(plan) };
  const known = ({ reads, placeless }: Part) =>
    !isTouched(placeless === true ? besidesPlaces(unread) : unread, ...reads);
  const topics = PARTS.filter(known).map(({ from }) => from(shared, unread));
  return {
    sections: topics.flatMap(({ sections }) => sections),
    diagnostics: topics.flatMap(({ diagnostics }) => diagnostics),
  };
}

function heightOf(plan: Plan): (screw: string) => number {
  const all = screwsOf(plan);
  return (screw) => {
    const own = all.find(({ name }) => name === screw);
    const [one, other, ...more] = all.filter(({ name }) => name !== screw);
    if (own === undefined || one === undefined || other === undefined || more.length > 0) return 0;
    const base = distance(one, other);
    const twice = (other.x - one.x) * (own.y - one.y) - (other.y - one.y) * (own.x - one.x);
    return base > 0 ? Math.abs(twice) / base : 0;
  };
}
