import { unzipSync, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import type { Mesh } from "../../../src/geometry/mesh.ts";
import { printMesh } from "../../../src/geometry/print-mesh.ts";
import { rectangle } from "../../../src/geometry/profile.ts";
import { prism } from "../../../src/geometry/solid.ts";
import { buildPlate } from "../../../src/outputs/package/build-plate.ts";
import { readThreeMf } from "../../../src/outputs/package/read-three-mf.ts";
import { type PackedPart, threeMf } from "../../../src/outputs/package/three-mf.ts";
import { measured } from "../../support/kernel.ts";

const block = (x: number, y: number): Mesh => printMesh(measured(prism(rectangle(0, 0, x, y), 0, 5)).mesh);

const part: PackedPart = {
  title: "bench",
  description: "a block",
  application: "tramwright 1.2.3",
  preset: '{ "format": 1 }\n',
  hash: "0badcafe",
  bedWidth: 100,
  bodies: [
    { name: "bench", mesh: block(30, 20), count: 2 },
    { name: "bench-lid", mesh: block(10, 40), count: 1 },
  ],
};

/** Letters that mean something in XML, to a terminal or to a reader of text, or that XML cannot hold. */
const HOSTILE = "a<b>&amp;\"c'</metadata>]]><!--\u0000\u001b[2J\ufffe\ud800 \u202e日本 é 😀";
const MODEL = "3D/3dmodel.model";
const modelOf = (bytes: Uint8Array) => new TextDecoder().decode(unzipSync(bytes)[MODEL]);
const packed = (model: string, name = MODEL) => zipSync({ [name]: new TextEncoder().encode(model) });

describe("the package", () => {
  const bytes = threeMf(part);

  test("has the entries of the specification, the types first, all dated alike", () => {
    // Open Packaging Conventions (ECMA-376 part 2): content types, relations, the model; a zip keeps its dates as words.
    expect(Object.keys(unzipSync(bytes))).toEqual([
      "[Content_Types].xml",
      "_rels/.rels",
      "Metadata/thumbnail.png",
      MODEL,
    ]);
    const view = new DataView(bytes.buffer, bytes.byteOffset);
    const heads = [...bytes.keys()].filter((at) => at + 4 <= bytes.length && view.getUint32(at, true) === 0x04034b50);
    // 12:00:00 on 1980-01-01 (.ZIP File Format Specification, 4.4.6: MS-DOS time and date).
    expect(heads.map((at) => [view.getUint16(at + 10, true), view.getUint16(at + 12, true)])).toEqual(
      heads.map(() => [12 << 11, (1 << 5) | 1]),
    );
    expect(heads).toHaveLength(4);
  });

  test("is the same to the byte when it is made again, and known by its first 200 bytes", () => {
    expect(threeMf(part)).toEqual(bytes);
    expect(new TextDecoder("latin1").decode(bytes.slice(0, 200))).toContain("tramwright 1.2.3");
  });

  test("hands back what it was given", () => {
    const { preset, hash, application } = part;
    expect(readThreeMf(bytes)).toMatchObject({ preset, hash, application });
  });

  test("holds hostile words as words", () => {
    const evil = { ...part, title: HOSTILE, description: HOSTILE, preset: HOSTILE, application: HOSTILE };
    const bodies = part.bodies.map((body) => ({ ...body, name: HOSTILE }));
    const read = readThreeMf(threeMf({ ...evil, bodies }));
    // What XML 1.0 cannot hold (section 2.2) is left out; all else is there.
    expect(read).toMatchObject({ preset: "a<b>&amp;\"c'</metadata>]]><!--[2J \u202e日本 é 😀" });
    const model = modelOf(threeMf({ ...evil, bodies }));
    expect(model.match(/<metadata /g)).toHaveLength(5);
    expect(model.match(/<object /g)).toHaveLength(2);
    expect(model).not.toContain("<!--");
  });
});

test("no two copies on the plate touch, and rows keep to the bed where they can", () => {
  const size = [30, 20, 10, 40];
  const copies = buildPlate(
    part.bodies.map(({ mesh, count }) => ({ mesh, count: count * 4 })),
    100,
  );
  expect(copies).toHaveLength(12);
  const boxes = copies.map(({ of, at: [x, y] }) => {
    const [wide = 0, long = 0] = size.slice(of * 2);
    return { left: x - wide / 2, right: x + wide / 2, front: y - long / 2, back: y + long / 2 };
  });
  for (const [index, a] of boxes.entries()) {
    expect(a.left).toBeGreaterThan(0);
    expect(a.front).toBeGreaterThan(0);
    expect(a.right).toBeLessThanOrEqual(100);
    for (const b of boxes.slice(index + 1)) {
      const apart = Math.max(a.left - b.right, b.left - a.right, a.front - b.back, b.front - a.back);
      expect(apart).toBeGreaterThan(5.9);
    }
  }
});

describe("a package that is not ours, or not a package", () => {
  const good = modelOf(threeMf(part));
  const wrongOf = (bytes: Uint8Array) => {
    const read = readThreeMf(bytes);
    return "wrong" in read ? read.wrong : "it was read";
  };

  test.each<[string, Uint8Array, RegExp]>([
    ["text", new TextEncoder().encode("not a zip file at all, only words"), /damaged|holds no/],
    ["nothing", new Uint8Array(0), /damaged|holds no/],
    ["a torn file", threeMf(part).slice(0, threeMf(part).length / 2), /damaged|holds no 3D/],
    ["a model that is cut off", packed(good.slice(0, -20)), /cut off/],
    ["another zip", packed("words", "a.txt"), /holds no 3D/],
    ["a name that climbs", packed(good, "../3D/3dmodel.model"), /holds no 3D/],
    ["a model of others", packed("<model><resources/></model>"), /no preset of tramwright/],
    ["entities", packed(`<!DOCTYPE m [<!ENTITY x SYSTEM "file:///etc/passwd">]>${good}`), /declares things/],
    [
      "a preset twice",
      packed(good.replace(/ <metadata name="tramwright:preset".*<\/metadata>/s, "$&$&")),
      /more than one/,
    ],
    ["no text", zipSync({ [MODEL]: Uint8Array.from([0xff, 0xfe, 0x00]) }), /not text/],
    ["too much", new Uint8Array(33 * 2 ** 20), /larger than 32 MB/],
  ])("is told as such: %s", (_, bytes, says) => {
    expect(wrongOf(bytes)).toMatch(says);
  });

  test("is not unpacked beyond 32 MB, whatever its head says of its size", () => {
    const bomb = zipSync({ [MODEL]: new Uint8Array(36 * 2 ** 20) }, { level: 1 });
    expect(bomb.length).toBeLessThan(2 ** 20);
    expect(wrongOf(bomb)).toMatch(/more than 32 MB/);
    // The size that the entry states, 22 bytes into its head (.ZIP File Format Specification, 4.3.7), made small.
    new DataView(bomb.buffer, bomb.byteOffset).setUint32(22, 1000, true);
    expect(wrongOf(bomb)).toMatch(/more than 32 MB/);
  });

  test("is not searched through for more than 1000 entries", () => {
    const many = Object.fromEntries(Array.from({ length: 1200 }, (_, index) => [`${index}`, new Uint8Array(1)]));
    expect(wrongOf(zipSync(many))).toMatch(/more than 1000 entries/);
  });

  test("another prefix for our metadata is understood", () => {
    const other = good.replaceAll("tramwright:hash", "ns1:hash").replaceAll("tramwright:preset", "ns1:preset");
    expect(readThreeMf(packed(other.replace("xmlns:tramwright=", "xmlns:ns1=")))).toMatchObject({
      preset: part.preset,
    });
  });
});
