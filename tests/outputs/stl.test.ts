import { execFileSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import modeling from "@jscad/modeling";
import { serializeBinary } from "@jscad/stl-serializer/CSGToStlb.js";
import fc from "fast-check";
import { STLLoader } from "three/examples/jsm/loaders/STLLoader.js";
import { describe, expect, test } from "vitest";
import { make } from "../../src/build/make.ts";
import type { Request } from "../../src/build/request.ts";
import type { Mesh } from "../../src/geometry/mesh.ts";
import { GRID, printMesh } from "../../src/geometry/print-mesh.ts";
import { disc, rectangle } from "../../src/geometry/profile.ts";
import { carve, cylinder, moved, prism, type Solid, turned, unite } from "../../src/geometry/solid.ts";
import { stl } from "../../src/outputs/stl.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { kernel, measured, meshVolume } from "../support/kernel.ts";
import { hasTool } from "../support/outside-tool.ts";
import { printerWith } from "../support/printer.ts";

const ADMESH = hasTool("admesh");
const folder = mkdtempSync(join(tmpdir(), "tramwright-stl-"));

/** What admesh says of a file: every count of something it had to mend. */
function mended(bytes: Uint8Array, name: string): Record<string, number> {
  const file = join(folder, `${name}.stl`);
  writeFileSync(file, bytes);
  const report = execFileSync("admesh", [file], { encoding: "utf8" });
  const count = (label: string) => Number(new RegExp(`${label}\\s*:\\s*(\\d+)`).exec(report)?.[1] ?? Number.NaN);
  return Object.fromEntries(
    [
      "Edges fixed",
      "Facets removed",
      "Facets added",
      "Facets reversed",
      "Backwards edges",
      "Normals fixed",
      "Degenerate facets",
    ].map((label) => [label, count(label)]),
  );
}

const CLEAN = {
  "Edges fixed": 0,
  "Facets removed": 0,
  "Facets added": 0,
  "Facets reversed": 0,
  "Backwards edges": 0,
  "Normals fixed": 0,
  "Degenerate facets": 0,
};

const requestOf = (family: (typeof FAMILIES)[number]): Request => ({
  name: family.name,
  family,
  parameters: family.schema.parse({}),
  printer: printerWith(),
  calibrated: true,
  accept: [],
});

describe.each(FAMILIES)("the default $name as a file", (family) => {
  const made = make(requestOf(family), kernel);

  test("is built without an error", () => {
    expect(made.diagnostics.filter(({ level }) => level === "error")).toEqual([]);
    expect(made.pieces.length).toBeGreaterThan(0);
  });

  test.skipIf(!ADMESH)("needs no mending by admesh", () => {
    made.pieces.forEach(({ mesh }, index) => {
      expect(mended(stl(mesh, family.name, made.hash), `${family.name}-${index}`)).toEqual(CLEAN);
    });
  });

  test("is read by three with the same triangles and volume", () => {
    made.pieces.forEach(({ mesh }) => {
      const bytes = stl(mesh, family.name, made.hash);
      const read = new STLLoader().parse(bytes.slice().buffer).getAttribute("position");
      expect(read.count).toBe(mesh.triangles.length);
      const positions = Float64Array.from(read.array);
      const triangles = Uint32Array.from({ length: read.count }, (_, corner) => corner);
      expect(meshVolume({ positions, triangles })).toBeCloseTo(meshVolume(mesh), 3);
      expect(meshVolume(mesh)).toBeGreaterThan(0);
      expect(Math.min(...positions.filter((_, axis) => axis % 3 === 2))).toBe(0);
    });
  });

  test("is the same to the byte when it is built again", () => {
    const again = make(requestOf(family), kernel);
    const files = (of: typeof made) => of.pieces.map(({ mesh }) => stl(mesh, family.name, of.hash));
    expect(files(again)).toEqual(files(made));
  });
});

test("the header names the part and its preset, in 80 bytes of ASCII", () => {
  const { mesh } = measured(prism(rectangle(0, 0, 1, 1), 0, 1));
  const header = new TextDecoder().decode(stl(mesh, "kiln-läft", "0badcafe").slice(0, 80));
  expect(header).toMatch(/^tramwright kiln-l\?ft 0badcafe mm +$/);
  expect(stl(mesh, "x".repeat(200), "0badcafe")).toHaveLength(80 + 4 + 12 * 50);
});

/** A block with a hole and a boss, turned every way: what float rounding would tear open. */
function turnedBlock(a: number, b: number, c: number): Solid {
  const block = carve(prism(rectangle(-20, -15, 20, 15), 0, 10), [moved(cylinder(2.75, -1, 11), [7, 3, 0])]);
  return turned(turned(turned(unite(block, prism(disc(8, [-8, 0]), 10, 24)), "x", a), "y", b), "z", c);
}

test.skipIf(!ADMESH)("any turned body stays closed on the grid of the file", () => {
  const angle = fc.double({ min: 0, max: 360, noNaN: true });
  let run = 0;
  fc.assert(
    fc.property(angle, angle, angle, (a, b, c) => {
      const mesh: Mesh = printMesh(measured(turnedBlock(a, b, c)).mesh);
      expect([...mesh.positions].every((value) => Math.fround(value) === value && value % GRID === 0)).toBe(true);
      expect(mended(stl(mesh, "block", "00000000"), `block-${run++}`)).toMatchObject({
        "Edges fixed": 0,
        "Facets removed": 0,
        "Facets reversed": 0,
        "Degenerate facets": 0,
      });
    }),
    { numRuns: 25 },
  );
});

describe("bytes", () => {
  // An independent writer of the format: @jscad/stl-serializer, of the same facets one by one.
  const elsewhere = ({ positions, triangles }: Mesh): Buffer => {
    const { geom3, poly3 } = modeling.geometries;
    const corner = (index = 0) => Array.from(positions.subarray(index * 3, index * 3 + 3)) as [number, number, number];
    const facets = Array.from({ length: triangles.length / 3 }, (_, facet) =>
      poly3.create([0, 1, 2].map((k) => corner(triangles[facet * 3 + k]))),
    );
    return Buffer.concat(serializeBinary([geom3.create(facets)], {}).map((part) => Buffer.from(part)));
  };

  test.each(FAMILIES.map((family) => [family.name, family] as const))(
    "of a %s are those of another writer, but for the header and the last digit of normals",
    (_, family) => {
      for (const { mesh } of make(requestOf(family), kernel).pieces) {
        const [own, other] = [Buffer.from(stl(mesh, "part", "0")), elsewhere(mesh)];
        expect(own).toHaveLength(other.length);
        expect(own.readUInt32LE(80)).toBe(other.readUInt32LE(80));
        for (let at = 84; at < own.length; at += 50) {
          expect(own.subarray(at + 12, at + 50).equals(other.subarray(at + 12, at + 50))).toBe(true);
          for (let axis = 0; axis < 12; axis += 4)
            expect(Math.abs(own.readFloatLE(at + axis) - other.readFloatLE(at + axis))).toBeLessThan(1e-6);
        }
      }
    },
  );
});
