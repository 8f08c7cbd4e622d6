import type { Diagnostic, Level } from "../core/diagnostic.ts";
import type { Unit } from "../core/unit.ts";
import type { Mesh } from "../geometry/mesh.ts";
import type { Place } from "../presets/place.ts";

/** What goes with the text of a preset; nothing of it must be given. */
export interface Options {
  /** What complaints call the file; it names the part as well where the preset gives it no name. */
  readonly file?: string;
  /** The text of the printer's file that prints everything, whatever the preset names. */
  readonly printer?: string;
  /** The texts of printers' files by the paths that the preset names them with. */
  readonly printers?: Readonly<Record<string, string>>;
}

/** Options of what builds. */
export interface BuildOptions extends Options {
  /**
   * What `WebAssembly.compile` gives of `tramwright/manifold.wasm`: for a page whose bundler does not put that file
   * beside the script. The first call decides.
   */
  readonly kernel?: Promise<object>;
}

/** Something that is wrong or worth knowing, with its place in the text; undefined where the text has none. */
export interface Complaint extends Diagnostic {
  readonly file: string;
  readonly place: Place | undefined;
}

/** What a text holds; undefined where it does not say. */
export type Kind = "part" | "stage" | "printer";

/** A derived number of a part: its name, the formula as printed, and the key of its source. */
export interface PartNumber {
  readonly key: string;
  readonly symbol: string;
  readonly value: number;
  readonly unit: Unit;
  readonly meaning: string;
  readonly formula: string;
  readonly source: string;
}

/** One line of what must be bought. */
export interface Purchase {
  readonly item: string;
  readonly count: number;
  readonly note?: string;
}

/** A finished body, measured on its triangles: mm, mm2, mm3, grams. */
export interface Body {
  /** The name of its file. */
  readonly file: string;
  readonly title: string;
  /** How many to print. */
  readonly count: number;
  readonly size: readonly [number, number, number];
  readonly volume: number;
  readonly mass: number;
  /** Undefined when no two faces lie opposite each other. */
  readonly thinnestWall: number | undefined;
  /** 0 when there is none. */
  readonly widestBridge: number;
  /** What to measure on the print. */
  readonly measures: readonly { readonly what: string; readonly expected: number; readonly tolerance: number }[];
  /** As it lies on the bed: for drawing it. */
  readonly mesh: Mesh;
}

/** A part, worked out. What it needs of other families follows it as parts of their own. */
export interface Part {
  readonly name: string;
  readonly family: string;
  readonly title: string;
  readonly material: string;
  /** Stands for family, parameters and printer: equal hash, equal part. */
  readonly hash: string;
  readonly numbers: readonly PartNumber[];
  readonly hardware: readonly Purchase[];
  readonly limits: readonly string[];
  readonly cautions: readonly string[];
}

/** A part that was built; without bodies where an error forbids it. */
export interface BuiltPart extends Part {
  readonly bodies: readonly Body[];
}

/** A number of a machine, with the calculation and inputs it follows from and the limit it is held against. */
export interface MachineNumber {
  readonly key: string;
  readonly label: string;
  readonly value: number;
  readonly unit: Unit;
  readonly from?: {
    readonly calculation: string;
    readonly result: string;
    readonly inputs: Readonly<Record<string, number>>;
  };
  readonly limit?: { readonly value: number; readonly kind: "at most" | "at least" };
}

/** One block of a machine's report. */
export interface ReportBlock {
  readonly title: string;
  readonly numbers: readonly MachineNumber[];
  /** What is no number: choices, and what was tried. */
  readonly lines: readonly string[];
}

/** What the text alone says, and arithmetic of it. */
export interface Derived<Of extends Part = Part> {
  readonly kind: Kind | undefined;
  /** Of the part or machine; undefined where the text could not be read. */
  readonly name: string | undefined;
  /** Whether there is no error among the complaints. */
  readonly ok: boolean;
  readonly complaints: readonly Complaint[];
  /** Empty where the text could not be read, and for a printer's file. */
  readonly parts: readonly Of[];
  /** The report of a machine, block by block; empty for a part. */
  readonly report: readonly ReportBlock[];
}

/** The same with what the finished bodies say. */
export type Checked = Derived<BuiltPart>;

/** A finished file, its name with `/` between folders. */
export interface MadeFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The same with the files. Parts that an error forbids have none; the files of a machine come with its first part. */
export interface Made extends Checked {
  readonly files: readonly MadeFile[];
}

/** What a family of parts is, and what it checks. Its parameters are told by its schema. */
export interface FamilyFacts {
  readonly name: string;
  readonly title: string;
  readonly purpose: string;
  /** How it lies on the bed and why. */
  readonly orientation: string;
  /** A drawing of letters that names the main measures. */
  readonly sketch: string;
  readonly checks: readonly {
    readonly name: string;
    readonly why: string;
    /** For each level the smallest change of the defaults that trips it. */
    readonly trips: Readonly<Partial<Record<Level, Readonly<Record<string, unknown>>>>>;
  }[];
}

/** What a defect is, what happens if nothing is done, and the way out. */
export interface DefectFacts {
  readonly name: string;
  /** The families whose check it is; empty for a defect of files, meshes, machines or calculations. */
  readonly families: readonly string[];
  readonly what: string | undefined;
  readonly why: string;
  readonly set: string | undefined;
}

/** A JSON Schema, draft-07. */
export type Schema = Readonly<Record<string, unknown>>;
