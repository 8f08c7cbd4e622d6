import { presetValue } from "./preset-value.ts";

/** Returns a preset that changes the defaults as told, ready to be copied; printer settings are a file of their own. */
export function presetLines(family: string, change: Readonly<Record<string, unknown>>): string[] {
  const { printer, ...parameters } = change;
  const pairs = (values: object) => Object.entries(values).map(([key, value]) => `  ${key}: ${presetValue(value)}`);
  const own = pairs(parameters);
  return [
    "format: 1",
    `part: ${family}`,
    ...(own.length === 0 ? [] : ["parameters:", ...own]),
    ...(printer === undefined
      ? []
      : [
          "# and in the file that --printer names:",
          "format: 1",
          "printer: example",
          "settings:",
          ...pairs(printer as object),
        ]),
  ];
}
