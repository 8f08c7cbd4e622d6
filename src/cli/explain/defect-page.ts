import { DEFECTS, type Defect } from "../../core/defects.ts";
import { hanging } from "./hanging.ts";
import type { Page } from "./page.ts";

/** Returns the page of a defect that is found in files or on finished meshes, whatever the family; none of others. */
export function defectPages(name: string): Page[] {
  if (!Object.hasOwn(DEFECTS, name)) return [];
  const defect: Defect = DEFECTS[name as keyof typeof DEFECTS];
  const { what, why, set, excusable, more } = defect;
  return [
    {
      name,
      title: `${name}: a defect that any part may have`,
      lines: [
        ...hanging("what    ", what),
        ...hanging("why     ", why),
        ...hanging("set     ", set),
        ...(excusable
          ? hanging("excuse  ", `accept: [{ check: ${name}, because: <reason> }] in a preset makes an error a warning`)
          : ["excuse  none: accept: in a preset does not lift it"]),
        ...(more === undefined ? [] : hanging("more    ", more)),
      ],
      data: { kind: "defect", name, ...defect },
    },
  ];
}
