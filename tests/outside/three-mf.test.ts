// Every 3MF of the demo, read by lib3mf, the reader of the 3MF Consortium (Debian's lib3mf-dev), in its strict mode.
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { make } from "../../src/build/make.ts";
import { draftOrder, type Finished, finish, finishDrafts } from "../../src/build/order.ts";
import { presetText } from "../../src/build/preset-text.ts";
import { load, readTarget } from "../../src/cli/load.ts";
import { loadStage } from "../../src/cli/load-stage.ts";
import { kernel, meshVolume } from "../support/kernel.ts";
import { lib3mfReader } from "../support/lib3mf-reader.ts";
import { readStl } from "../support/read-stl.ts";

const options = { set: [], printer: undefined, version: "1.2.3" };

const presets = readdirSync("presets/parts", { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => join("presets/parts", name));
const plans = readdirSync("presets/stages").map((name) => join("presets/stages", name));

function partsOf(path: string): Finished[] {
  if (!plans.includes(path)) {
    const { request } = load(readTarget(path), options);
    if (request === undefined) throw new Error(`${path} cannot be read`);
    return finishDrafts(draftOrder(request), kernel, options.version);
  }
  const { machine } = loadStage(readTarget(path), options);
  return (machine?.parts ?? []).map(({ request }) => finish(make(request, kernel), options.version));
}

const read = lib3mfReader();

describe.skipIf(read === undefined)("lib3mf", () => {
  test.each([...presets, ...plans])("reads every 3MF of %s as it was meant", (path) => {
    const folder = mkdtempSync(join(tmpdir(), "tramwright-3mf-"));
    const parts = partsOf(path);
    expect(parts.length).toBeGreaterThan(0);
    const packages = parts.map(({ made, files }) => {
      for (const { name, bytes } of files) writeFileSync(join(folder, name), bytes);
      return join(folder, `${made.request.name}.3mf`);
    });
    for (const [index, found] of (read?.(packages) ?? []).entries()) {
      const part = parts[index] as Finished;
      const { request, hash } = part.made;
      expect(found).toMatchObject({ result: 0, warnings: 0, unit: 1, picture: true });
      expect(found.metadata["urn:tramwright:part:preset"]).toBe(presetText(request));
      expect(found.metadata).toMatchObject({ "urn:tramwright:part:hash": hash, Application: "tramwright 1.2.3" });
      expect(found.metadata.Title).toContain(request.name);
      expect(found.objects.map(({ name }) => `${name}.stl`)).toEqual(part.pieces.map(({ file }) => file));
      for (const object of found.objects) {
        const stl = readStl(readFileSync(join(folder, `${object.name}.stl`)));
        expect(object.triangles).toBe(stl.triangles.length / 3);
        expect(object.vertices).toBe(stl.positions.length / 3);
        expect(object.sound, "closed, and every facet looks outwards").toBe(true);
        expect(object.volume).toBeCloseTo(meshVolume(stl), 3);
      }
      const wanted = part.pieces.flatMap(({ file, made: { piece } }) => Array(piece.count).fill(file));
      expect(found.items.map(({ of }) => `${of}.stl`)).toEqual(wanted);
    }
  });
});
