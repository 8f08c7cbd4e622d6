import { hasErrors } from "../../core/diagnostic.ts";
import { reportData } from "../../outputs/report-json.ts";
import { grid } from "../explain/grid.ts";
import { hanging } from "../explain/hanging.ts";
import { EXIT, type Io } from "../io.ts";
import type { LoadedStage, Machine } from "../load-stage.ts";
import { inOrder, messageData } from "../message.ts";
import { sectionLines } from "../section-lines.ts";
import { tell } from "../tell.ts";

interface ReportArgs {
  readonly json: boolean;
  readonly quiet: boolean;
  readonly version: string;
}

/** Prints the numbers of a machine, block by block; what was found goes to the side. Returns the exit code. */
export function report({ machine, messages }: LoadedStage, args: ReportArgs, io: Io): number {
  const said = inOrder(messages);
  if (args.json) {
    const data = { ...(machine === undefined ? {} : dataOf(machine, args.version)), messages: said.map(messageData) };
    io.out(JSON.stringify(data, undefined, 2));
  } else {
    tell(said, io, args);
    if (machine !== undefined) for (const line of machineLines(machine, io)) io.out(line);
  }
  return hasErrors(said.map(({ diagnostic }) => diagnostic)) ? EXIT.errors : EXIT.done;
}

function dataOf({ preset, stage, parts }: Machine, version: string): object {
  const listed = parts.map(({ request, hash, owner }) => {
    const { name, family } = request;
    return { name, family: family.name, hash, owner };
  });
  return reportData({ name: preset.name, version, stage, parts: listed });
}

function machineLines({ preset, stage, parts }: Machine, io: Io): string[] {
  const blocks = [
    ...stage.sections.map((section) => sectionLines(section, io.paint)),
    ...(parts.length === 0 ? [] : [partTable(parts, io)]),
  ];
  return [
    ...hanging(
      "",
      `${preset.name}: ${stage.plan.units === "in" ? "planned in inches, told in mm" : "all lengths in mm"}`,
    ),
    ...blocks.flatMap((block) => ["", ...block]),
    "",
    io.paint("faint", "tramwright explain <name> --preset <plan> tells where a number comes from."),
  ];
}

function partTable(parts: Machine["parts"], io: Io): string[] {
  const rows = parts.map(({ request, hash, owner, companion }) => {
    const [x, y, z] = owner.placement.origin;
    const place = companion ? ["", "", "", ""] : [x, y, z, owner.placement.angle].map((one) => one.toFixed(2));
    return [request.name, request.family.name, hash, ...place, owner.moves ? "with the stage" : ""];
  });
  return [
    io.paint("bold", "Printed parts"),
    ...grid(["part", "family", "preset", ">x mm", ">y mm", ">z mm", ">turned deg", "moves"], rows),
  ];
}
