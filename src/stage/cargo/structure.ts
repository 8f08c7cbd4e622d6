import { distance } from "../../mechanics/point.ts";
import type { Section, Topic } from "../fact.ts";
import type { Stage } from "../machine.ts";
import type { DesignedPart } from "../parts/design-of.ts";
import { arms } from "./arms.ts";
import { drive } from "./drive.ts";
import { fasteners } from "./fasteners.ts";
import { growth } from "./growth.ts";
import { heater } from "./heater.ts";
import { screwsOf } from "./index.ts";
import { mounts } from "./mounts.ts";
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

/** Returns everything about drive, screws, arms, wheels, mounts and heater: numbers with limits, and what is wrong. */
export function structure(stage: Omit<Stage, "sections" | "diagnostics">, designed: readonly DesignedPart[]): Topic {
  const { plan } = stage;
  const shared = { ...stage, designed, drives: screwDrives(plan), height: heightOf(plan) };
  const plain = (section: Section): Topic => ({ sections: [section], diagnostics: [] });
  const topics = [
    drive(shared),
    screws(shared),
    arms(shared),
    plain(wheels(shared)),
    mounts(shared),
    plain(growth(plan)),
    plateLayout(shared),
    heater(shared),
    plain(fasteners(shared)),
  ];
  return {
    sections: topics.flatMap(({ sections }) => sections),
    diagnostics: topics.flatMap(({ diagnostics }) => diagnostics),
  };
}

function heightOf(plan: Stage["plan"]): (screw: string) => number {
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
