import { expect } from "vitest";

/** What is told of a refusal. */
export interface Told {
  readonly name: string;
  readonly says: string;
  readonly set: string;
  readonly why?: string;
  readonly found?: object;
  readonly limit?: object;
}

/** Asserts a refusal word for word, with both of its numbers or without any. */
export function expectTold(outcome: object, told: Told): void {
  expect(outcome).toMatchObject({ refused: told.says, defect: { level: "error", path: [], ...told } });
  const { found, limit } = (outcome as { defect: Told }).defect;
  expect({ found, limit }).toEqual({ found: told.found, limit: told.limit });
}

export const mm = (value: number) => ({ value, unit: "mm" });
export const plain = (value: number) => ({ value, unit: "" });
