import { symbolsOf } from "../../core/formula.ts";
import type { AnyFamily, Design } from "../../parts/family.ts";
import { HOW_TO_MEASURE } from "../../printing/calibration.ts";
import { type Printer, printerSchema, UNCALIBRATED } from "../../printing/printer.ts";
import { hanging } from "./hanging.ts";
import type { Page } from "./page.ts";
import { type ParameterField, parameterFields } from "./parameter-field.ts";
import { parameterLines } from "./parameter-lines.ts";
import { presetValue } from "./preset-value.ts";

/** The word before the point that means a setting of the printer. */
export const PRINTER = "printer";

/** Returns the parameters of a family, told whether the part works them out when they are left out. */
export function familyFields(family: AnyFamily, design: Design): ParameterField[] {
  const symbols = new Set(design.dimensions.map(({ symbol }) => symbol));
  return parameterFields(family.schema, family.schema.parse({}), symbols);
}

/** Returns the settings of a printer, each with how it is found. */
export const printerFields = (): ParameterField[] =>
  parameterFields(printerSchema, UNCALIBRATED).map((field) => ({
    ...field,
    how: HOW_TO_MEASURE[field.key as keyof Printer],
  }));

/** Returns a parameter as its row, the numbers that name it, and the checks that point at it. */
export function parameterPage(family: AnyFamily, design: Design, field: ParameterField, preset: boolean): Page {
  const name = `${family.name}.${field.key}`;
  const numbers = naming(design, field.symbol);
  const checks = family.checks.filter(({ path }) => path[0] === field.key).map((check) => check.name);
  return {
    name,
    title: `${name}: a parameter of ${family.name}`,
    lines: [
      ...parameterLines([field]),
      "",
      ...(numbers.length === 0 ? [] : hanging("goes into  ", numbers.join(", "))),
      ...(checks.length === 0 ? [] : hanging("checked by ", checks.join(", "))),
      ...hanging("in a file  ", `parameters: { ${field.key}: ... }, or --set ${field.key}=...`),
      ...(field.table === undefined ? [] : hanging("rows       ", `tramwright stock ${field.table}`)),
      ...(preset ? hanging("preset     ", presetValue(design.parameters[field.key] ?? "left out")) : []),
    ],
    data: { kind: "parameter", family: family.name, ...field, numbers, checks },
  };
}

/** Returns a setting of the printer as its row and the numbers of all parts that name it. */
export function settingPage(families: readonly AnyFamily[], field: ParameterField, printer: Printer): Page {
  const name = `${PRINTER}.${field.key}`;
  const numbers = families.flatMap((family) => {
    const design = family.design(family.schema.parse({}), printer);
    return naming(design, field.symbol).map((key) => `${family.name}.${key}`);
  });
  return {
    name,
    title: `${name}: a setting of the printer`,
    lines: [
      ...parameterLines([field]),
      "",
      ...(numbers.length === 0 ? [] : hanging("goes into  ", numbers.join(", "))),
      ...hanging("in a file  ", `settings: { ${field.key}: ... } of the file that --printer names`),
      "test piece tramwright explain printer",
    ],
    data: { kind: "printer setting", ...field, numbers },
  };
}

/** Returns the keys of the numbers whose formula names the symbol. */
function naming({ dimensions }: Design, symbol: string): string[] {
  if (symbol === "") return [];
  return dimensions.filter(({ formula }) => namesOf(formula).includes(symbol)).map(({ key }) => key);
}

const namesOf = (formula: string) => (formula.startsWith('"') ? [] : symbolsOf(formula));
