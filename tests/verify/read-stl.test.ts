import { STLLoader } from "three/examples/jsm/loaders/STLLoader.js";
import { describe, expect, it } from "vitest";
import { cornerOf, facets, vectorAt } from "../../src/geometry/facets.ts";
import type { Mesh } from "../../src/geometry/mesh.ts";
import { soundness } from "../../src/verify/soundness.ts";
import { readStl, readStlNormals } from "../support/read-stl.ts";
import { bearingBlock, meshOf } from "./bodies.ts";

const mesh = meshOf(bearingBlock(() => 20));
const file = stl(mesh);

describe("the reader of binary STL that the tests use", () => {
  it("gives the body that was written", () => {
    const read = readStl(file);
    expect(read.triangles).toHaveLength(mesh.triangles.length);
    expect(soundness(read)).toEqual(soundness(mesh));
  });

  it("agrees with another reader, corner by corner and normal by normal", () => {
    const read = readStl(file);
    const other = new STLLoader().parse(file.buffer as ArrayBuffer);
    const places = [...other.getAttribute("position").array];
    expect([...read.triangles].flatMap((corner) => [...vectorAt(read.positions, corner)])).toEqual(places);
    const normals = [...other.getAttribute("normal").array].filter((_, index) => index % 9 < 3);
    expect([...readStlNormals(file)]).toEqual(normals);
  });

  it("reads from the middle of a larger buffer, and refuses a cut file", () => {
    const larger = new Uint8Array(file.length + 7);
    larger.set(file, 7);
    expect(readStl(larger.subarray(7)).triangles).toEqual(readStl(file).triangles);
    expect(() => readStl(file.subarray(0, file.length - 1))).toThrow(RangeError);
    expect(() => readStl(file.subarray(0, 40))).toThrow(RangeError);
  });
});

function stl(body: Mesh): Uint8Array {
  const { normals } = facets(body);
  const count = body.triangles.length / 3;
  const view = new DataView(new ArrayBuffer(84 + count * 50));
  view.setUint32(80, count, true);
  for (let facet = 0; facet < count; facet++) {
    const corners = [0, 1, 2].flatMap((k) => [...cornerOf(body, facet, k)]);
    [...vectorAt(normals, facet), ...corners].forEach((value, index) => {
      view.setFloat32(84 + facet * 50 + index * 4, value, true);
    });
  }
  return new Uint8Array(view.buffer);
}
