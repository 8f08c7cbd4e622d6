import { stageParts } from "../../build/stage-parts.ts";
import { count, type Level } from "../../core/diagnostic.ts";
import { readYaml } from "../../presets/read.ts";
import { readStagePreset, type StagePreset } from "../../presets/stage-preset.ts";
import { UNCALIBRATED } from "../../printing/printer.ts";
import { motorPulleys } from "../../stage/feet/motor-pulleys.ts";
import { deriveOnce } from "../../stage/index.ts";
import { loopsAreSound } from "../../stage/loops/index.ts";
import type { Answers } from "./answers.ts";
import type { Place } from "./part-text.ts";
import { stageText } from "./stage-text.ts";
import { driveOf } from "./starter-drive.ts";
import { type Attempt, frameOf, type Spot } from "./starter-plan.ts";

/** A plan to begin with, and how many errors are left in it. */
export interface Starter {
  readonly text: string;
  readonly errors: number;
  /** What is told besides, that of a printer nobody has measured left out. */
  readonly warnings: number;
}

/** Machines that are worked out whole before the best is taken, with errors and without; belts alone take less. */
const MOST_WHOLE = 8;
const MOST_SOUND = 3;
const INSETS = [0, 10, 20, 30, 40, 50, 60, 75, 90, 105, 120, 135, 150, 170, 190];
const OUT = [35, 40, 45, 50, 55, 60, 30, 70, 80, 90, 100];
const ALONG = [0.5, 0.4, 0.6];

/**
 * Returns the plan of a stage that works out without an error where one is found: motor, and screws if need be, are
 * moved until belts that are sold fit. Each attempt is read back as the text it is.
 */
export function starterStage(answers: Answers, place: Place): Starter {
  let best: Starter | undefined;
  let whole = 0;
  let sound = 0;
  for (const attempt of attempts(answers).filter((one) => motorFits(answers, one))) {
    const text = stageText(answers, attempt, place);
    const preset = readStagePreset(readYaml(place.file, text)).value;
    if (preset === undefined || !beltsFit(preset)) continue;
    const { error: errors, warning: warnings } = faultsOf(preset);
    if (best === undefined || errors < best.errors || (errors === best.errors && warnings < best.warnings))
      best = { text, errors, warnings };
    whole++;
    if (errors === 0) sound++;
    if (errors + warnings === 0 || sound === MOST_SOUND || whole === MOST_WHOLE) break;
  }
  return best ?? withoutBelt(answers, place);
}

function attempts({ loops }: Answers): Attempt[] {
  const shares = loops === 2 ? [0.5] : ALONG;
  return INSETS.flatMap((inset) => OUT.flatMap((out) => shares.map((along) => ({ inset, out, along }))));
}

/** Half a motor's body and air: nearer to the frame's outside its bars are in the way, mm. */
const MOTOR_ROOM = 24;

function motorFits(answers: Answers, attempt: Attempt): boolean {
  const frame = frameOf(answers);
  const [x, y] = driveOf(frame, answers, attempt).motor.at as Spot;
  const least = frame.barWidth + MOTOR_ROOM;
  // Screws that stand in the middle carry nothing at the corners.
  if (frame.barWidth + attempt.inset > 0.35 * frame.width) return false;
  return Math.min(x, frame.width - x, y, frame.depth - y) >= least;
}

function beltsFit({ plan }: StagePreset): boolean {
  const drive = motorPulleys(plan);
  return drive.diagnostics.every(({ level }) => level === "note") && loopsAreSound(plan, drive.pulleys);
}

function faultsOf({ plan }: StagePreset): Record<Level, number> {
  const stage = deriveOnce(plan, () => UNCALIBRATED);
  const parts = stageParts(stage, () => ({ printer: UNCALIBRATED, calibrated: true }), "");
  return count([...stage.diagnostics, ...parts.flatMap(({ designed }) => designed.diagnostics)]);
}

/** No belt of the usual lengths fits: the first attempt is written all the same, and what is wrong is told by check. */
function withoutBelt(answers: Answers, place: Place): Starter {
  const first = attempts(answers).find((one) => motorFits(answers, one));
  const text = stageText(answers, first ?? { inset: 0, out: 35, along: 0.5 }, place);
  const preset = readStagePreset(readYaml(place.file, text)).value;
  const { error, warning } = preset === undefined ? { error: 1, warning: 0 } : faultsOf(preset);
  return { text, errors: Math.max(1, error), warnings: warning };
}
