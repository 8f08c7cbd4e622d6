import type { Kernel } from "../geometry/kernel.ts";
import { type Carried, readThreeMf } from "../outputs/package/read-three-mf.ts";
import { draftPart, makeDraft } from "./make.ts";
import { type Finished, finish } from "./order.ts";
import { packageFile } from "./output-names.ts";
import { presetText } from "./preset-text.ts";
import type { Request } from "./request.ts";

/** What came of making a part again from the preset in its file. */
export interface Rebuilt {
  readonly finished: Finished;
  /** The program's version that the file names, where it names one. */
  readonly version: string | undefined;
  /** In the order in which the part's files are written; none where an error forbids the part. */
  readonly files: readonly ComparedFile[];
}

/** A file of the part, and how the one that is there compares with the one that was made. */
export interface ComparedFile {
  readonly name: string;
  readonly state: "equal" | "differs" | "not there";
  /** What differs, as far as it can be told. */
  readonly differs: readonly string[];
}

/**
 * Makes a part again and compares it with the package that carries its preset, and with what lies beside. The files
 * are written down under the version that the package names, so that only what was really made otherwise differs.
 * `beside` returns the bytes of a file of that name, or nothing.
 */
export function rebuilt(
  request: Request,
  carried: Carried,
  packed: Uint8Array,
  { kernel, version, beside }: Around,
): Rebuilt {
  const [, stated] = /^tramwright (\S{1,40})$/.exec(carried.application) ?? [];
  const finished = finish(makeDraft(draftPart(request), kernel), stated ?? version);
  const own = packageFile(request.name);
  const files = finished.files.map(({ name, bytes }): ComparedFile => {
    const there = name === own ? packed : beside(name);
    if (there === undefined) return { name, state: "not there", differs: [] };
    if (sameBytes(there, bytes)) return { name, state: "equal", differs: [] };
    return { name, state: "differs", differs: name === own ? differences(request, carried, bytes) : [] };
  });
  return { finished, version: stated, files };
}

interface Around {
  readonly kernel: Kernel;
  readonly version: string;
  readonly beside: (name: string) => Uint8Array | undefined;
}

function sameBytes(one: Uint8Array, other: Uint8Array): boolean {
  return one.length === other.length && one.every((byte, at) => byte === other[at]);
}

/** Returns what differs between two packages of a part, from what they are to how they are packed. */
function differences(request: Request, { model, preset }: Carried, bytes: Uint8Array): string[] {
  const made = readThreeMf(bytes);
  if ("wrong" in made) throw new Error(`a package of our own cannot be read: ${made.wrong}`);
  const [there, anew] = [solidsIn(model), solidsIn(made.model)];
  const names = [...new Set([...there.keys(), ...anew.keys()])];
  const solids = names.filter((name) => there.get(name) !== anew.get(name)).map((name) => `the solid ${name}`);
  const text = preset === presetText(request) ? [] : ["the preset's text, which was not written like this"];
  if (solids.length + text.length > 0) return [...text, ...solids];
  return [model === made.model ? "how it is packed, or its picture" : "what is said of it, or where its solids stand"];
}

/** Returns what stands between the tags of each object, by the object's name. */
function solidsIn(model: string): Map<string, string> {
  const solids = model.split("<object ").slice(1);
  return new Map(
    solids.map((text, index) => {
      const [, name = String(index + 1)] = /^[^>]*\bname="([^"]*)"/.exec(text) ?? [];
      return [name.slice(0, 80), text.slice(text.indexOf(">"), text.indexOf("</object>"))];
    }),
  );
}
