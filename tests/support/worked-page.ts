/** One line of a page that works a machine by hand. */
export interface WorkedLine {
  /** The name that the report has it under; undefined for a step on the way. */
  readonly key: string | undefined;
  readonly name: string;
  readonly expression: string;
  readonly result: number;
  /** What the last printed digit of the result counts. */
  readonly digit: number;
  readonly unit: string;
  readonly source: string;
}

/** Numbers of the report that are another one of the page again; a name that ends with a full stop is a beginning. */
export interface Twin {
  readonly name: string;
  readonly is: string;
}

/** Returns the lines of the page's tables that hold an expression and its result. */
export function workedLines(page: string): WorkedLine[] {
  return cellsOf(page, 5).flatMap(([name = "", , numbers = "", result = "", source = ""]) => {
    const expression = /^`(.+)`$/.exec(numbers)?.[1];
    const [, number = "", decimals = "", unit = ""] = /^(-?\d+(?:\.(\d+))?)(?: (\S+))?$/.exec(result) ?? [];
    if (expression === undefined || number === "") return [];
    const key = /^`(.+)`$/.exec(name)?.[1];
    return [{ key, name, expression, result: Number(number), digit: 10 ** -decimals.length, unit, source }];
  });
}

/** Returns the page's table of numbers that are the same again. */
export function twinsOf(page: string): Twin[] {
  return cellsOf(page, 3).flatMap(([name = "", is = ""]) => {
    const [own, other] = [/^`(.+)`$/.exec(name)?.[1], /^`(.+)`$/.exec(is)?.[1]];
    return own === undefined || other === undefined ? [] : [{ name: own, is: other }];
  });
}

/** Cells of the table rows that have so many. */
function cellsOf(page: string, columns: number): string[][] {
  return page
    .split("\n")
    .filter((line) => line.startsWith("| "))
    .map((line) => line.slice(2, -2).split(" | "))
    .filter((cells) => cells.length === columns);
}
