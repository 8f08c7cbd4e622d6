import { harmless, oneLine } from "../core/unprintable.ts";
import { reason } from "./file-reason.ts";
import { glanceAt } from "./glance.ts";
import { EXIT, isTrouble } from "./io.ts";
import { keepOptimisedKernel, kernelCode } from "./kernel-code.ts";
import { runShortly } from "./run-shortly.ts";
import { secondThread } from "./second-thread.ts";
import type { Outlets } from "./world.ts";

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
  // A step of the build. V8 takes the kernel's code only under the flags under which it was made.
  if (process.env.TRAMWRIGHT_KEEP_COMPILED === "kernel") return await keepOptimisedKernel();
  const { ofMachine, machines } = glanceAt(argv);
  if (machines === "there" && (await answered(argv))) return;
  // A part needs the kernel in any case; that of a machine is the second thread's. Where it has to be compiled, that
  // begins on other threads while the program itself is loaded.
  if (!ofMachine && ["make", "check", "rebuild"].some((word) => argv.includes(word))) kernelCode();
  // It gets ready while the program itself is loaded.
  const early = machines === "new" ? secondThread() : undefined;
  const { loadProgram } = await import("./program.ts");
  const { exports: program, keepCompiled } = loadProgram(ofMachine ? "machine" : "part");
  // For a machine the second thread does that, when it is loaded itself.
  if (!ofMachine) runShortly();
  cleanUp = program.cleanUp;
  const outlets = outletsNow();
  const { screens } = outlets;
  process.exitCode = await program.run({
    ...outlets,
    argv,
    version: TRAMWRIGHT_VERSION,
    // To ask Node's own stream would make it unfit to be read at once, as the presets are.
    person: screens.out && screens.err && (await import("node:tty")).isatty(0),
    kernelCode,
    secondThread: () => early ?? secondThread(),
  });
  // Set by the build's trial run only.
  if (process.env.TRAMWRIGHT_KEEP_COMPILED === "program") keepCompiled();
}

const outletsNow = (): Outlets => ({
  environment: process.env,
  screens: { out: process.stdout.isTTY === true, err: process.stderr.isTTY === true },
  write,
  draw: (text: string) => process.stderr.write(text),
  columns: process.stderr.columns ?? 80,
});

/** Whether the small program had the answer: everything is there as it was made. */
async function answered(argv: readonly string[]): Promise<boolean> {
  const { loadMadeAlready } = await import("./program.ts");
  const { exports, keepCompiled } = loadMadeAlready();
  const code = exports.madeAlready(argv, TRAMWRIGHT_VERSION, outletsNow());
  if (code !== undefined) process.exitCode = code;
  if (process.env.TRAMWRIGHT_KEEP_COMPILED === "made-already") keepCompiled();
  return code !== undefined;
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
