import { SCREEN, wrap } from "./screen.ts";

/** The shells that completion scripts are written for. */
export const SHELLS = ["bash", "zsh", "fish", "powershell"] as const;

/** What a command is for, by example first. */
export interface Help {
  readonly summary: string;
  readonly examples: readonly string[];
  readonly usage: string;
  readonly options: readonly (readonly [string, string])[];
}

/** What every command has. */
const USUAL: Help["options"] = [
  ["--color auto|always|never", "colours; NO_COLOR and FORCE_COLOR are heeded"],
  ["-h, --help", "this text"],
];
const SHARED: Help["options"] = [["--json", "the result as one JSON document, described in docs/json"], ...USUAL];
const SET = [
  "--set key=value",
  "changes a parameter; may be repeated; bearing.width=6.98 reaches into a bought item",
] as const;
const MESSAGES = [
  "--messages full|short|json",
  "how errors, warnings and notes are told; short: one line each",
] as const;
const QUIET = ["-q, --quiet", "less: no notes, no list of what was made, cautions counted only"] as const;
/** Less and more of what is told. */
const TALK: Help["options"] = [
  QUIET,
  ["-v, --verbose", "more: notes with reason and cure, every number of a part"],
  MESSAGES,
];
const PRINTER = ["--printer file", "the printer's calibration, instead of the one the preset names"] as const;

export const COMMANDS: Readonly<Record<string, Help>> = {
  new: {
    summary: "a preset to fill in, with what to measure and how; asks when on a terminal",
    examples: [
      "tramwright new screw-foot",
      "tramwright new stage --screws 3 --bar '30x30 slot 8' --plate '400 x 300' -o my-stage.yaml",
      "tramwright new stage --units in --frame '24 x 20' --loops 2",
      "tramwright new wheel-plate --set wheels=3 --set load='4 lbf' -o -",
      "tramwright new printer --name 'bench printer, PETG'",
      "tramwright new --from old-carriage.yaml -o carriage.yaml",
    ],
    usage: "tramwright new <family, stage or printer>, or new --from <preset>",
    options: [
      ["-o, --output file", "the file to write, - for standard output (default: <name>.yaml)"],
      ["--name name", "what it is called"],
      ["--set key=value", "a parameter of the part, or a setting of the printer; may be repeated"],
      ["--units mm|in", "stage: what bare lengths are in"],
      ["--screws 2|3|4", "stage: lead screws that carry it"],
      ["--bar row", "stage: the bar, a row of tramwright stock bars"],
      ["--frame width x depth", "stage: outer size of the frame: 500 x 480, or 50 x 48 cm"],
      ["--plate width x depth", "stage: size of the plate"],
      ["--lift height", "stage: how far it rises"],
      ["--loops 1|2", "stage: one belt round all screws, or two (with 3 screws)"],
      ["--from file", "brings a preset up to date: keys by today's names, those it lacks as comments, all else kept"],
      ["--force", "replaces a file that is there"],
      ...SHARED,
    ],
  },
  make: {
    summary: "derive, check, build, verify and write parts, or all of a stage",
    examples: [
      "tramwright make presets/parts/screw-foot/*.yaml -o out",
      "tramwright make presets/stages/seed-bench.yaml",
      "tramwright make screw-foot --set beltPlane='1 1/4 in' --set bearing=628",
      "tramwright make my-foot.yaml --printer my-printer.yaml --dry-run",
    ],
    usage: "tramwright make <preset, plan of a stage, 3MF of a part or family>...",
    options: [
      ["-o, --output folder", "where the files go (default: out)"],
      SET,
      PRINTER,
      ["--dry-run", "everything but the writing"],
      ["--force", "replaces files that tramwright did not write, and builds all parts anew"],
      ...TALK,
      ...SHARED,
    ],
  },
  check: {
    summary: "everything make finds, nothing written",
    examples: [
      "tramwright check my-foot.yaml",
      "tramwright check presets/parts/*/*.yaml --messages short",
      "tramwright new screw-foot -o - | tramwright check -",
    ],
    usage: "tramwright check <preset, plan of a stage, 3MF of a part or family>...",
    options: [SET, PRINTER, ...TALK, ...SHARED],
  },
  rebuild: {
    summary: "makes a part again from the preset in its 3MF file, and says whether the bytes agree",
    examples: ["tramwright rebuild out/shelf-lift-left.3mf", "tramwright rebuild somebody.3mf -o mine"],
    usage: "tramwright rebuild <part.3mf>...",
    options: [
      ["-o, --output folder", "writes what was made, and its preset, into this folder; else nothing is written"],
      ["--force", "replaces files that tramwright did not write"],
      ...TALK,
      ...SHARED,
    ],
  },
  report: {
    summary: "the numbers of a stage, with limits and margins",
    examples: ["tramwright report presets/stages/seed-bench.yaml", "tramwright report my-stage.yaml --json"],
    usage: "tramwright report <plan of a stage>",
    options: [SET, PRINTER, ...TALK, ...SHARED],
  },
  compare: {
    summary: "what to keep, restack, shim, flip or print again after a change",
    examples: [
      "tramwright compare old-stage.yaml new-stage.yaml",
      "tramwright compare presets/stages/seed-bench.yaml --set motor.plateTop=12",
    ],
    usage: "tramwright compare <old plan> <new plan>",
    options: [
      ["--set key=value", "changes the new plan; with one plan only, what it is compared with"],
      PRINTER,
      QUIET,
      MESSAGES,
      ...SHARED,
    ],
  },
  tram: {
    summary: "what each mount of the plate must do to bring it level",
    examples: [
      "tramwright tram presets/stages/seed-bench.yaml --probe 160,133,0 --probe 460,133,0.2 --probe 310,350,-0.1",
    ],
    usage: "tramwright tram <plan of a stage> --probe x,y,height ...",
    options: [
      [
        "--probe x,y,height",
        "three or more on the plate, x and y as in the plan; positive where it is high; in the plan's unit",
      ],
      ["--spring mount=length", "length of a mount's spring now, bare as in the plan; left out, as set"],
      SET,
      PRINTER,
      MESSAGES,
      ...SHARED,
    ],
  },
  parts: {
    summary: "the families of parts; one family: parameters, dimensions, checks; or the printer, or a stage",
    examples: ["tramwright parts", "tramwright parts tram-mount", "tramwright parts stage"],
    usage: "tramwright parts [family, printer or stage]",
    options: SHARED,
  },
  schema: {
    summary: "JSON Schema of presets, for editors that complete and check them while you type",
    examples: ["tramwright schema screw-foot", "tramwright schema stage > stage.json"],
    usage: "tramwright schema <family, stage or printer>",
    options: SHARED,
  },
  explain: {
    summary: "where a number comes from, or what a check means",
    examples: [
      "tramwright explain screw-foot.seat",
      "tramwright explain seat --preset my-foot.yaml",
      "tramwright explain screw.A.share --preset my-stage.yaml",
      "tramwright explain spring-rate",
      "tramwright explain washer-spans-both-rings",
      "tramwright explain printer",
    ],
    usage: "tramwright explain <number, calculation, check, source or printer>",
    options: [["--preset file", "works the number out for this preset or plan"], SET, PRINTER, MESSAGES, ...SHARED],
  },
  stock: {
    summary: "the hardware tables, with sources",
    examples: ["tramwright stock", "tramwright stock bearings --bore 8", "tramwright stock bars '20x20 slot 6'"],
    usage: "tramwright stock [table] [row]",
    options: [["--<field> value", "rows whose field has the value; '<=8', '>10' and '8..12' work too"], ...SHARED],
  },
  completion: {
    summary: "a script for the shell that completes commands, options and names at the tab key",
    examples: [
      "tramwright completion bash > ~/.local/share/bash-completion/completions/tramwright",
      "tramwright completion zsh > ~/.zfunc/_tramwright",
      "tramwright completion fish > ~/.config/fish/completions/tramwright.fish",
      "tramwright completion powershell >> $PROFILE",
    ],
    usage: `tramwright completion <${SHELLS.join(", ")}>`,
    options: USUAL,
  },
};

/** Returns words that go on below themselves. */
const beside = (head: string, words: string) =>
  `${head}${wrap(words, SCREEN - head.length).join(`\n${" ".repeat(head.length)}`)}`;

/** Returns the help of the whole program. */
export function overview(version: string): string {
  const commands = Object.entries(COMMANDS).map(([name, { summary }]) => beside(`  ${name.padEnd(10)} `, summary));
  const examples = Object.values(COMMANDS).map((help) => `  ${help.examples[0]}`);
  return [
    `tramwright ${version}: printable brackets and pulley mounts for home-built lifting stages`,
    "",
    "Examples",
    ...examples,
    "",
    "Commands",
    ...commands,
    "",
    "tramwright <command> --help tells the rest, and so does help <command>; --version the version.",
    "Results go to standard output, talk to standard error. - in place of a file to read is standard",
    "input; new -o - writes to standard output; make writes several files, so its -o is a folder.",
    "Exit codes: 0 done, 1 the design or file has errors, 2 wrong usage, 3 cannot read or write,",
    "70 a fault of ours, 130 and 143 stopped by Ctrl-C or a signal.",
  ].join("\n");
}

/** Returns the help of one command, examples first. */
export function helpOf(name: string): string {
  const help = COMMANDS[name];
  if (help === undefined) return "";
  return [
    help.summary,
    "",
    "Examples",
    ...help.examples.map((example) => `  ${example}`),
    "",
    `Usage: ${help.usage}`,
    ...help.options.map(([flag, what]) => beside(`  ${flag.padEnd(26)} `, what)),
  ].join("\n");
}

const ASKS = ["-h", "--help"];

/** Returns the help that is asked for and nothing else, in any of its ways; undefined for every other command line. */
export function helpFor(argv: readonly string[], version: string): string | undefined {
  const words = argv[0] === "help" ? ["--help", ...argv.slice(1)] : argv;
  if (words.length > 0 && !words.some((word) => ASKS.includes(word))) return undefined;
  const [name, ...more] = words.filter((word) => word !== "help" && !ASKS.includes(word));
  if (name === undefined) return overview(version);
  return more.length === 0 && Object.hasOwn(COMMANDS, name) ? helpOf(name) : undefined;
}
