import { harmless } from "../core/unprintable.ts";
import { type Io, type Paint, painter } from "./io.ts";
import type { Progress } from "./progress.ts";

/** Which of the two streams are terminals. */
export interface Screens {
  readonly out: boolean;
  readonly err: boolean;
}

interface Wanted {
  readonly write: Pick<Io, "out" | "err">;
  readonly screens: Screens;
  readonly color: string;
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly progress: Progress;
}

/**
 * Returns the two streams and what paints for them. A stream that is not to be coloured gets words without colour, and
 * what reaches a terminal holds no sign that steers it but our own; into files and pipes everything goes as it is.
 */
export function streams({ write, screens, color, environment, progress }: Wanted): Pick<Io, "out" | "err" | "paint"> {
  const stream = (name: "out" | "err") => {
    const painted = paints(painter(color, environment, screens[name]));
    return (line: string) => {
      progress.clear();
      const plain = painted ? line : line.replace(PAINT, "");
      write[name](
        screens[name] ? plain.replace(PAINT_OR_SIGN, (part) => (part.length > 1 ? part : harmless(part))) : plain,
      );
    };
  };
  return { out: stream("out"), err: stream("err"), paint: painter(color, environment, screens.out || screens.err) };
}

const paints = (paint: Paint) => paint("bold", "x") !== "x";

// biome-ignore lint/suspicious/noControlCharactersInRegex: colours begin with one.
const PAINT = /\u001b\[\d+m/g;
// biome-ignore lint/suspicious/noControlCharactersInRegex: as above.
const PAINT_OR_SIGN = /\u001b\[\d+m|[^\n\t\x20-\x7e]/g;
