import type { Stage } from "../../stage/index.ts";
import { hanging } from "./hanging.ts";
import type { Page } from "./page.ts";

/**
 * Returns the page of a part of a machine by the name of its files: what it belongs to in the plan, and the numbers of
 * the report that are about it.
 */
export function machinePartPages({ parts, sections }: Stage, name: string): Page[] {
  return parts
    .filter((part) => part.name === name)
    .map(({ family, path }) => {
      const [kind = ""] = name.split("-");
      const own = String(path.at(-1) ?? "");
      const about = sections
        .flatMap(({ facts }) => facts.map(({ key }) => key))
        .filter((key) => key.startsWith(`${kind}.${own}.`) || key.startsWith(`${name}.`));
      const place = path.join(".");
      const title = `${name}: the ${family} of ${place} in the plan`;
      const numbers = about.length === 0 ? "none of its own" : about.join(", ");
      const command = `tramwright parts ${family}`;
      const lines = [`shown by  ${command}`, ...hanging("numbers   ", numbers)];
      return { name, title, lines, data: { kind: "machine-part", name, title, command, place, numbers: about } };
    });
}
