import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runTool } from "../support/outside-tool.ts";

/**
 * Solves a deck with CalculiX, a general-purpose structural solver (Debian package `calculix-ccx`), and returns its
 * table of results. Throws when the solver is missing or complains.
 */
export function solve(deck: string): string {
  const folder = mkdtempSync(join(tmpdir(), "tramwright-ccx-"));
  try {
    writeFileSync(join(folder, "job.inp"), deck);
    const said = runTool("ccx", ["job"], "", folder);
    if (/\*ERROR/.test(said)) throw new Error(`ccx complains: ${/\*ERROR.*/.exec(said)?.[0]}`);
    return readFileSync(join(folder, "job.dat"), "utf8");
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A number as the solver reads it: fields of at most 20 characters, always with a point. */
export function field(value: number): string {
  const text = value.toPrecision(12);
  return text.includes(".") ? text : `${text}.`;
}

/** Returns the rows of numbers of a table, each with its node first. */
export function rows(table: string): number[][] {
  return table
    .split("\n")
    .map((line) => line.trim().split(/\s+/).map(Number))
    .filter((row) => row.length > 1 && row.every(Number.isFinite));
}
