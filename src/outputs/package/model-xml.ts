import { onceForEach } from "../../core/once-for-each.ts";
import type { Mesh } from "../../geometry/mesh.ts";
import { GRID } from "../../geometry/print-mesh.ts";
import { escaped } from "../svg/marks.ts";
import type { Copy } from "./build-plate.ts";

/** The names of our own metadata, and the space that keeps them apart from those of others. */
export const SPACE = "urn:tramwright:part";
export const PRESET = "tramwright:preset";
export const HASH = "tramwright:hash";

/** What a model says of itself. */
export interface Metadata {
  readonly title: string;
  readonly description: string;
  /** `tramwright 0.1.0` */
  readonly application: string;
  /** Canonical text of the preset, and its short hash. */
  readonly preset: string;
  readonly hash: string;
}

/** A body by its name. */
export interface NamedMesh {
  readonly name: string;
  readonly mesh: Mesh;
}

const CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

/** Returns the model part of a 3MF package (3MF core specification 1.3), lengths in mm. */
export function modelXml(metadata: Metadata, objects: readonly NamedMesh[], copies: readonly Copy[]): string {
  const { title, description, application, preset, hash } = metadata;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<model unit="millimeter" xml:lang="en" xmlns="${CORE}" xmlns:tramwright="${SPACE}">`,
    ` <metadata name="Title">${content(title)}</metadata>`,
    ` <metadata name="Description">${content(description)}</metadata>`,
    ` <metadata name="Application">${content(application)}</metadata>`,
    ` <metadata name="${HASH}" preserve="1">${content(hash)}</metadata>`,
    ` <metadata name="${PRESET}" preserve="1">${content(preset)}</metadata>`,
    " <resources>",
    ...objects.map((object, index) => objectXml(object, index + 1, hash)),
    " </resources>",
    " <build>",
    ...copies.map(({ of, at: [x, y] }) => {
      const transform = `1 0 0 0 1 0 0 0 1 ${onGrid(x)} ${onGrid(y)} 0`;
      return `  <item objectid="${of + 1}" transform="${transform}" partnumber="${escaped(hash)}"/>`;
    }),
    " </build>",
    "</model>",
    "",
  ].join("\n");
}

function objectXml({ name, mesh }: NamedMesh, id: number, hash: string): string {
  const named = `name="${escaped(name)}" partnumber="${escaped(hash)}"`;
  return [`  <object id="${id}" type="model" ${named}>`, meshXml(mesh), "  </object>"].join("\n");
}

/** Parts that are alike share it. */
const meshXml = onceForEach(({ positions, triangles }: Mesh): string => {
  const lines = ["   <mesh>", "<vertices>"];
  for (let at = 0; at < positions.length; at += 3)
    lines.push(`<vertex x="${positions[at]}" y="${positions[at + 1]}" z="${positions[at + 2]}"/>`);
  lines.push("</vertices>", "<triangles>");
  for (let at = 0; at < triangles.length; at += 3)
    lines.push(`<triangle v1="${triangles[at]}" v2="${triangles[at + 1]}" v3="${triangles[at + 2]}"/>`);
  lines.push("</triangles>", "   </mesh>");
  return lines.join("\n");
});

/** Quotation marks mean nothing between tags, and some readers hand out what stands for them as it is. */
const content = (text: string) => escaped(text).replaceAll("&quot;", '"').replaceAll("&apos;", "'");

/** Places are put on the grid of the meshes, so that moved corners are as exact as those at the origin. */
const onGrid = (value: number) => Math.round(value / GRID) * GRID;
