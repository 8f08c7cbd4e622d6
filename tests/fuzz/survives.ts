import { draftOrder } from "../../src/build/order.ts";
import { namesTakenTwice } from "../../src/build/output-names.ts";
import { isTrouble, painter } from "../../src/cli/io.ts";
import { load } from "../../src/cli/load.ts";
import { loadStage } from "../../src/cli/load-stage.ts";
import { inOrder, messageData, messageLines } from "../../src/cli/message.ts";
import { hasErrors } from "../../src/core/diagnostic.ts";
import { kindOf } from "../../src/presets/preset-file.ts";
import { readPrinterPreset } from "../../src/presets/printer-preset.ts";
import { type Located, readYaml } from "../../src/presets/read.ts";

/** What one file may take, seconds of this process. */
const LONGEST = 2;
/** What a file of a set may be called, so that it lies in the set's folder. */
const NAME = /^[A-Za-z0-9][A-Za-z0-9-]*$/;
/** What no line of a message may have: control signs, turned text, half letters (ECMA-48, UAX 9), numbers that are none. */
const ODD = /[^\P{Cc}\n]|[\p{Cs}\u202a-\u202e\u2066-\u2069]|\bNaN\b|\bundefined\b|\[object /u;

/** Reads, works out and checks a preset of any kind; draws its parts where nothing is wrong. Returns what went wrong. */
export function flawOf(text: string, target: string): string | undefined {
  const start = process.cpuUsage();
  let flaw: string | undefined;
  try {
    flaw = answered(text, target);
  } catch (thrown) {
    flaw = isTrouble(thrown) ? `ends the program: ${thrown.trouble}` : `throws ${(thrown as Error)?.stack ?? thrown}`;
  }
  const { user, system } = process.cpuUsage(start);
  const took = (user + system) / 1e6;
  return flaw ?? (took > LONGEST ? `takes ${took.toFixed(1)} s` : undefined);
}

function answered(text: string, target: string): string | undefined {
  const { messages, names } = outcome(text, target);
  for (const message of inOrder(messages)) {
    const lines = messageLines(message, painter("never", {}, false));
    const odd = lines.find((line) => ODD.test(line) && !ODD.test(text));
    if (odd !== undefined) return `says ${JSON.stringify(odd)}`;
    if (JSON.stringify(messageData(message)) === undefined) return "has no JSON";
    const { says, set, why } = message.diagnostic;
    if (says === "" || set === "" || why === "") return `says too little: ${says}`;
    if (message.place !== undefined && !(message.place.line >= 1 && message.place.column >= 1)) return "has no place";
  }
  const name = names.find((one) => !NAME.test(one));
  return name === undefined ? undefined : `would write to ${JSON.stringify(name)}`;
}

function outcome(text: string, target: string): { messages: readonly Located[]; names: readonly string[] } {
  const file = readYaml(target, text);
  const options = { set: [], printer: undefined, version: "1" };
  const kind = kindOf(file);
  if (kind === "printer") return { messages: readPrinterPreset(file).complaints, names: [] };
  if (kind === "stage") {
    const { machine, messages } = loadStage({ target, file, family: undefined }, options);
    const parts = machine?.parts.map(({ request }) => request.name) ?? [];
    return { messages, names: machine === undefined ? [] : [machine.preset.name, ...parts] };
  }
  const { request, messages, locate } = load({ target, file, family: undefined }, options);
  if (request === undefined || hasErrors(messages.map(({ diagnostic }) => diagnostic))) return { messages, names: [] };
  const drafts = draftOrder(request);
  const taken = namesTakenTwice([{ file: target, drafts }]).flat();
  const found = [...drafts.flatMap(({ diagnostics }) => diagnostics), ...taken].map(locate);
  return { messages: [...messages, ...found], names: drafts.map(({ request: { name } }) => name) };
}
