import { cornerOf, facets, vectorAt } from "../../src/geometry/facets.ts";
import type { Mesh, Vec3 } from "../../src/geometry/mesh.ts";
import { meshEdges, next } from "../../src/verify/mesh-edges.ts";
import { dot } from "../../src/verify/vector.ts";
import { type Axes, axesOf, type Camera, project } from "./camera.ts";
import { blankCanvas, type Colour, halved, type Picture, type Point, paintLine, paintTriangle } from "./canvas.ts";

export interface Look {
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** The plane that the mesh was cut by: its face is painted as cut material. */
  readonly cut?: { readonly normal: Vec3; readonly offset: number } | undefined;
}

const BODY: Colour = [122, 160, 196];
const CUT: Colour = [232, 160, 72];
/** The inner side of a facet: seen only where the mesh is open or inside out. */
const INSIDE: Colour = [214, 64, 96];
const INK: Colour = [24, 30, 40];
const FEATURE = Math.cos((25 * Math.PI) / 180);
const MARGIN = 24;
/** How much a line may lie behind the surface it belongs to, in pixels of the large canvas. */
const SLACK = 3;

/**
 * Returns a picture of a mesh on white: flat shading, and lines at outlines and at edges sharper than 25 degrees.
 * Everything is drawn at twice the size and halved, which smooths the steps.
 */
export function rasterise(source: Mesh, camera: Camera, look: Look): Picture {
  const edges = meshEdges(source);
  const { mesh, twin } = edges;
  const axes = axesOf(camera);
  const canvas = blankCanvas(look.width * 2, look.height * 2);
  const { points } = project(mesh, axes, canvas.width, canvas.height, MARGIN * 2);
  const { normals } = facets(mesh);
  const pointOf = (half: number): Point => vectorAt(points, mesh.triangles[half] as number);
  for (let facet = 0; facet < mesh.triangles.length / 3; facet++) {
    const corners = [pointOf(facet * 3), pointOf(facet * 3 + 1), pointOf(facet * 3 + 2)] as const;
    paintTriangle(canvas, corners, colourOf(mesh, facet, vectorAt(normals, facet), axes, look));
  }
  twin.forEach((other, half) => {
    if (other > half || !isLine(normals, half, other, axes)) return;
    paintLine(canvas, pointOf(half), pointOf(next(half)), INK, SLACK);
  });
  return halved(canvas);
}

function colourOf(mesh: Mesh, facet: number, normal: Vec3, axes: Axes, { cut }: Look): Colour {
  const facing = dot(normal, axes.towards);
  const isCut =
    cut !== undefined &&
    Math.abs(dot(normal, cut.normal)) > 0.9999 &&
    Math.abs(dot(cornerOf(mesh, facet, 0), cut.normal) - cut.offset) < 2e-3;
  const base = facing < 0 ? INSIDE : isCut ? CUT : BODY;
  // Light from over the viewer's left shoulder.
  const light = 0.75 * facing + 0.5 * dot(normal, axes.up) - 0.35 * dot(normal, axes.right);
  const shade = Math.min(1.15, 0.62 + 0.5 * Math.max(-0.3, light));
  return base.map((channel) => Math.min(255, Math.round(channel * shade))) as unknown as Colour;
}

/** Whether the edge is a border, a sharp edge, or part of the outline. */
function isLine(normals: Float64Array, half: number, other: number, axes: Axes): boolean {
  if (other < 0) return true;
  const here = vectorAt(normals, Math.floor(half / 3));
  const there = vectorAt(normals, Math.floor(other / 3));
  const isOutline = dot(here, axes.towards) > 1e-6 !== dot(there, axes.towards) > 1e-6;
  return isOutline || dot(here, there) < FEATURE;
}
