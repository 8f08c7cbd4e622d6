import { unusedSettings } from "../unused.ts";
import type { FootCheck } from "./seat.ts";

const notUsed: FootCheck = {
  name: "setting-not-used",
  path: ["collar"],
  why: "a setting without effect was meant to have one: the part is not the one that was asked for",
  trips: { warning: { collar: "8 clamp" } },
  test: ({ given }) => {
    const unused = unusedSettings(given);
    const [first] = unused;
    if (first === undefined) return undefined;
    const says = unused.map(({ name, with: use }) => `${name} counts only with ${use}`).join("; ");
    const set = unused.map(({ name, with: use }) => `${use}, or leave out ${name}`).join("; ");
    return { level: "warning", path: [first.name], says, set };
  },
};

export const settingChecks: readonly FootCheck[] = [notUsed];
