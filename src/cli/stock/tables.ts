import { TABLES as BOUGHT } from "../../catalogue/index.ts";
import type { Table } from "../../core/table.ts";
import { MATERIALS } from "../../printing/materials.ts";

/** Every table a builder may look into: bought hardware, then printing materials. */
export const ALL_TABLES = [...BOUGHT, MATERIALS] as unknown as readonly Table[];
