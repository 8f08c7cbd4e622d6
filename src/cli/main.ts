import v8 from "node:v8";
import { harmless, oneLine } from "../core/unprintable.ts";
import { reason } from "./file-reason.ts";
import { tryOrdinary } from "./file-text.ts";
import { EXIT, isTrouble } from "./io.ts";
import { compiledKernel, keepOptimisedKernel, optimisedKernel } from "./kernel-code.ts";
import { secondThread } from "./second-thread.ts";

declare const TRAMWRIGHT_VERSION: string;

/** A pipe that was closed (`| head`) is not a fault: the rest is simply not wanted. A full disk is told, where it can be. */
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(EXIT.done);
  process.stderr.write(`tramwright: cannot write the results: ${reason(error)}\n`);
  process.exit(EXIT.files);
});
process.stderr.on("error", () => undefined);

const write = {
  out: (line: string) => process.stdout.write(`${line}\n`),
  err: (line: string) => process.stderr.write(`${line}\n`),
};

const MACHINE_COMMANDS = ["report", "compare", "tram"];

/** Whether a word of the command line names the plan of a machine, as far as a glance can tell. */
function isPlan(word: string): boolean {
  if (!/\.ya?ml$/.test(word)) return false;
  const read = tryOrdinary(word);
  return "text" in read && /^stage:/m.test(read.text);
}

async function main(argv: readonly string[]): Promise<void> {
  // The two questions that need nothing loaded are answered at once.
  if (argv.length === 1 && argv[0] === "--version") {
    write.out(TRAMWRIGHT_VERSION);
    return;
  }
  if (argv.length <= 2) {
    const help = (await import("./help.ts")).helpFor(argv, TRAMWRIGHT_VERSION);
    if (help !== undefined) {
      write.out(help);
      return;
    }
  }
  // A step of the build.
  if (process.env.TRAMWRIGHT_KEEP_COMPILED === "kernel") return await keepOptimisedKernel();
  const builds = ["make", "check", "rebuild"].some((word) => argv.includes(word));
  const optimised = builds ? optimisedKernel() : undefined;
  let cleanUp = () => {};
  for (const [signal, code] of [
    ["SIGINT", 130],
    ["SIGTERM", 143],
  ] as const) {
    process.once(signal, () => {
      cleanUp();
      process.exit(code);
    });
  }
  // What a run throws away fits the first young generation; fresh pages for a larger one cost more than its collection.
  v8.setFlagsFromString("--semi-space-growth-factor=1");
  // A single part is made too soon for the optimising compiler of WebAssembly to pay; a whole machine is not.
  const ofMachine = argv.some(isPlan) || MACHINE_COMMANDS.includes(argv[0] ?? "");
  // Of the code of a machine, only what runs for long pays for being optimised: two threads have work besides.
  if (ofMachine) v8.setFlagsFromString("--interrupt-budget=600000");
  else {
    v8.setFlagsFromString("--no-wasm-tier-up");
    v8.setFlagsFromString("--no-wasm-dynamic-tiering");
  }
  // Where it has to be compiled, that begins on other threads while the program itself is loaded.
  const begun = builds ? Promise.resolve(optimised ?? compiledKernel()) : undefined;
  begun?.catch(() => undefined);
  const code = () => begun ?? compiledKernel();
  // The second thread gets ready meanwhile; a plan that a glance does not find is made on this one alone.
  const second = begun !== undefined && ofMachine && argv.includes("make") ? secondThread(begun) : undefined;
  const { loadProgram } = await import("./program.ts");
  const { exports: program, keepCompiled } = loadProgram(ofMachine ? "machine" : "part");
  cleanUp = program.cleanUp;
  const screens = { out: process.stdout.isTTY === true, err: process.stderr.isTTY === true };
  process.exitCode = await program.run({
    argv,
    version: TRAMWRIGHT_VERSION,
    environment: process.env,
    screens,
    // To ask Node's own stream would make it unfit to be read at once, as the presets are.
    person: screens.out && screens.err && (await import("node:tty")).isatty(0),
    write,
    draw: (text) => process.stderr.write(text),
    columns: process.stderr.columns ?? 80,
    kernelCode: code,
    second,
  });
  // Set by the build's trial run only.
  if (process.env.TRAMWRIGHT_KEEP_COMPILED !== undefined) keepCompiled();
}

/** Tells what ended the program: trouble in one line, or a fault of ours with what helps to find it. */
function end(thrown: unknown): void {
  process.exitCode = isTrouble(thrown) ? thrown.exit : EXIT.fault;
  if (isTrouble(thrown)) write.err(`tramwright: ${oneLine(thrown.trouble)}`);
  else {
    const says = "tramwright: a fault of ours, please report it with the command you typed and the preset";
    write.err(`${says}\n${harmless(String((thrown as Error)?.stack ?? thrown))}`);
  }
}

process.on("uncaughtException", end);
main(process.argv.slice(2)).catch(end);
