import { type Draft, draftPart } from "../build/make.ts";
import { draftOrder, type Finished, finishDrafts } from "../build/order.ts";
import { namesTakenTwice } from "../build/output-names.ts";
import { hashOf } from "../build/preset-text.ts";
import type { Request } from "../build/request.ts";
import type { Diagnostic } from "../core/diagnostic.ts";
import type { Kernel } from "../geometry/kernel.ts";
import { CAUTIONS } from "../parts/cautions.ts";
import type { Design } from "../parts/family.ts";
import { locatedInPart, type PartPreset, parseParameters, readPartPreset } from "../presets/part-preset.ts";
import { locatedIn, slugFrom } from "../presets/preset-file.ts";
import { readSettings } from "../presets/printer-preset.ts";
import type { Located, YamlFile } from "../presets/read.ts";
import type { Body, BuiltPart, Checked, Derived, Made, Options, Part } from "./answers.ts";
import { anyError, complaintsOf, type GivenPrinter, printerFor } from "./opened.ts";

/** A part as far as its text could be understood. */
interface Asked {
  readonly request: Request | undefined;
  readonly messages: readonly Located[];
}

/** Returns what the text of a part and arithmetic say. */
export function derivedPart(file: YamlFile, options: Options): Derived {
  const { request, messages } = asked(file, options);
  if (request === undefined) return answered(undefined, messages, []);
  const drafts = anyError(messages) ? [draftPart(request)] : draftOrder(request);
  const found = drafts.flatMap(({ request: own, diagnostics }, index) => placed(file, own, diagnostics, index));
  return answered(request, [...messages, ...found], drafts.map(partOf));
}

/** Returns the same with finished bodies and files. */
export function madePart(file: YamlFile, options: Options, version: string, kernel: Kernel): Made {
  const { request, messages } = asked(file, options);
  if (request === undefined || anyError(messages)) {
    const parts = request === undefined ? [] : [{ ...partOf(draftPart(request)), bodies: [] }];
    return { ...answered(request, messages, parts), files: [] };
  }
  const drafts = draftOrder(request);
  const [taken = []] = namesTakenTwice([{ file: file.name, drafts }]);
  if (taken.length > 0) {
    const said = [...messages, ...taken.map((one) => locatedIn(file, one))];
    return {
      ...answered(
        request,
        said,
        drafts.map((one) => ({ ...partOf(one), bodies: [] })),
      ),
      files: [],
    };
  }
  const finished = finishDrafts(drafts, kernel, version);
  const found = finished.flatMap(({ made }, index) => placed(file, made.request, made.diagnostics, index));
  const files = finished.flatMap((one) => one.files);
  return { ...answered(request, [...messages, ...found], finished.map(builtPart)), files };
}

function asked(file: YamlFile, options: Options): Asked {
  const { value: preset, complaints } = readPartPreset(file);
  const told = [...(file.notes ?? []), ...complaints];
  if (preset === undefined) return { request: undefined, messages: told };
  const { value, complaints: inner } = parseParameters(preset.family, preset.parameters, file.lost);
  const { printer, calibrated, messages } = printerOf(file, preset, options);
  const all = [...told, ...inner.map((one) => locatedIn(file, one)), ...messages];
  if (value === undefined || printer === undefined || complaints.length > 0)
    return { request: undefined, messages: all };
  const name = preset.name ?? slugFrom(file.name.replace(/^.*[\\/]/, "").replace(/\.ya?ml$/, ""));
  const { family, accept } = preset;
  return { request: { name, family, parameters: value, printer, calibrated, accept }, messages: all };
}

/** Returns the printer that a preset names, or whose settings it holds, as those that travel in parts do. */
function printerOf(file: YamlFile, { printer, calibrated }: PartPreset, options: Options): GivenPrinter {
  if (typeof printer !== "object" || options.printer !== undefined)
    return printerFor(file, ["printer"], typeof printer === "object" ? undefined : printer, options);
  const { value, complaints } = readSettings(file, printer, ["printer"]);
  return { printer: value, calibrated, messages: complaints };
}

/** A companion's parameters come from the main part, so its complaints stand at the part itself. */
function placed(file: YamlFile, { name }: Request, found: readonly Diagnostic[], index: number): Located[] {
  if (index === 0) return found.map((one) => locatedInPart(file, one));
  return found.map((one) => locatedInPart(file, { ...one, path: ["part"], says: `${name}: ${one.says}` }));
}

function answered<Of extends Part>(request: Request | undefined, messages: readonly Located[], parts: Of[]) {
  return {
    kind: "part",
    name: request?.name,
    ok: request !== undefined && !anyError(messages),
    complaints: complaintsOf(messages),
    parts,
    report: [],
  } as const satisfies Derived<Of>;
}

const partOf = ({ request, design }: Draft): Part => partFacts(request, design, hashOf(request));

/** Returns what is told of a part that was worked out. */
export function partFacts({ name, family }: Request, design: Design, hash: string): Part {
  const { title, material, dimensions, hardware, limits, cautions } = design;
  return {
    name,
    family: family.name,
    title,
    material,
    hash,
    numbers: dimensions,
    hardware,
    limits,
    cautions: cautions.map((one) => CAUTIONS[one]),
  };
}

/** Returns a part with its finished bodies. */
export function builtPart({ made, pieces }: Finished): BuiltPart {
  return { ...partFacts(made.request, made.design, made.hash), bodies: pieces.map(bodyOf) };
}

function bodyOf({ file, made: { piece, mesh }, figures }: Finished["pieces"][number]): Body {
  const { facets: _, ...sizes } = figures;
  const { title, count, measures } = piece;
  return { file, title, count, ...sizes, measures, mesh };
}

/** Returns the answer without its files. */
export function withoutFiles({ files: _, ...checked }: Made): Checked {
  return checked;
}
