import Module, { type CrossSection, type Manifold, type ManifoldToplevel } from "manifold-3d";
import { type Assembly, assemblyOf, within } from "./assembly.ts";
import { divided, drawOut, layOn } from "./corner-moves.ts";
import { footedPrism } from "./footed-prism.ts";
import type { Box, Mesh, Vec2 } from "./mesh.ts";
import type { Profile } from "./profile.ts";
import { CHORD_TOLERANCE, circumscribed, ring, segments } from "./segments.ts";
import type { Placement, Solid } from "./solid.ts";
import { stepTools } from "./step-tools.ts";

/** The solid kernel, once it is loaded. The only file that knows manifold-3d; it frees what it makes. */
export interface Kernel {
  /** Evaluates a solid, hands the body to `use`, and frees everything afterwards. */
  readonly build: <Answer>(solid: Solid, use: (body: Body) => Answer, tolerance?: number) => Answer;
  /** Hands a hall in which solids are compared in pairs to `use`, and frees everything afterwards. */
  readonly assemble: <Answer>(use: (hall: Assembly) => Answer) => Answer;
}

/** A finished body; valid only inside the `use` function it was handed to. */
export interface Body {
  readonly mesh: () => Mesh;
  /** Volume in mm3. */
  readonly volume: () => number;
  readonly box: () => Box;
  /** Number of separate bodies. */
  readonly pieces: () => number;
  /** Volume in mm3 that the body shares with another solid: 0 when they only touch, or by less than 0.001 mm. */
  readonly shared: (other: Solid) => number;
  /** Area in mm2 of the section at a height. */
  readonly sectionArea: (z: number) => number;
}

/** Freed in one go when a build ends. */
type Arena = <Handle extends { delete(): void }>(handle: Handle) => Handle;

/** Chord tolerance of bodies that are only compared, never written: hardware and the room it needs, mm. */
const ROOM_TOLERANCE = 0.05;

let loading: Promise<Kernel> | undefined;

/** Loads the kernel once. `code` is its compiled wasm file, where the caller has it: a bundle, say. */
export function loadKernel(code?: Promise<WebAssembly.Module>): Promise<Kernel> {
  loading ??= start(code).then((top) => {
    top.setup();
    return {
      build: (solid, use, tolerance = CHORD_TOLERANCE) =>
        working(top, tolerance, (shop) => use(bodyOf(shop, evaluate(shop, solid)))),
      assemble: (use) =>
        working(top, ROOM_TOLERANCE, (shop) => use(assemblyOf((solid) => evaluate(shop, solid), shop.arena))),
    };
  });
  return loading;
}

async function start(code?: Promise<WebAssembly.Module>): Promise<ManifoldToplevel> {
  if (code === undefined) return await Module();
  const module = await code;
  const instantiateWasm = (imports: object, done: (instance: WebAssembly.Instance) => void) => {
    const instance = new WebAssembly.Instance(module, imports);
    done(instance);
    return instance.exports;
  };
  return await Module({ instantiateWasm } as never);
}

function working<Answer>(top: ManifoldToplevel, tolerance: number, work: (shop: Workshop) => Answer): Answer {
  const handles: { delete(): void }[] = [];
  const arena: Arena = (handle) => {
    handles.push(handle);
    return handle;
  };
  try {
    return work({ top, arena, tolerance });
  } finally {
    for (const handle of handles) handle.delete();
  }
}

interface Workshop {
  readonly top: ManifoldToplevel;
  readonly arena: Arena;
  readonly tolerance: number;
}

function bodyOf(shop: Workshop, body: Manifold): Body {
  return {
    mesh: () => remembered(meshOf(body), body),
    volume: () => body.volume(),
    box: () => body.boundingBox(),
    pieces: () => body.decompose().map(shop.arena).length,
    shared: (other) => {
      const room = evaluate({ ...shop, tolerance: ROOM_TOLERANCE }, other);
      const sharedWith = (tool: Manifold) => shop.arena(body.intersect(tool)).volume();
      return sharedWith(within(room, shop.arena)) === 0 ? 0 : sharedWith(room);
    },
    sectionArea: (z) => shop.arena(body.slice(z)).area(),
  };
}

function meshOf(body: Manifold): Mesh {
  const { numProp, vertProperties, triVerts } = body.getMesh();
  const count = vertProperties.length / numProp;
  const positions = new Float64Array(count * 3);
  for (let vertex = 0; vertex < count; vertex++) {
    for (let axis = 0; axis < 3; axis++) positions[vertex * 3 + axis] = vertProperties[vertex * numProp + axis] ?? 0;
  }
  return { positions, triangles: Uint32Array.from(triVerts) };
}

/** Evaluates a tree. Unions and cuts are single n-ary operations, which the kernel does best. */
function evaluate(shop: Workshop, solid: Solid): Manifold {
  const { Manifold } = shop.top;
  const all = (solids: readonly Solid[]) => solids.map((part) => evaluate(shop, part));
  switch (solid.kind) {
    case "prism":
      return straight(shop, solid);
    case "revolved":
      return revolve(shop, solid);
    case "laid":
      return lay(shop, solid);
    case "hull":
      return shop.arena(Manifold.hull(all(solid.parts)));
    case "union":
      return shop.arena(Manifold.union(all(solid.parts)));
    case "common":
      return shop.arena(Manifold.intersection(all(solid.parts)));
    case "cut":
      return shop.arena(Manifold.difference([evaluate(shop, solid.from), ...all(stepTools(solid.tools))]));
    case "placed":
      return shop.arena(evaluate(shop, solid.of).transform(columns(solid.placement)));
    case "meshed":
      return taken(shop, solid.mesh);
  }
}

/** The kernel wants a 4 x 4 matrix, column by column. */
function columns(p: Placement): Parameters<Manifold["transform"]>[0] {
  return [p[0], p[4], p[8], 0, p[1], p[5], p[9], 0, p[2], p[6], p[10], 0, p[3], p[7], p[11], 1];
}

function straight(shop: Workshop, { profile, z0, z1, foot }: Extract<Solid, { kind: "prism" }>): Manifold {
  const shape = contoursOf(shop, profile);
  if (foot > 0) {
    const { positions, triangles } = footedPrism(shape, z0, z1, foot, (outlines) => shop.top.triangulate(outlines));
    return taken(shop, { positions, triangles });
  }
  const raised = shop.arena(shop.top.Manifold.extrude(shape, z1 - z0));
  return z0 === 0 ? raised : shop.arena(raised.translate(0, 0, z0));
}

/** The bodies of the latest meshes, of more than a machine has parts: to read a mesh in again takes longer. */
const bodiesOfMeshes = new Map<Mesh, Manifold>();
const REMEMBERED = 24;

/** Remembers the body of a mesh under a handle of its own, and forgets the oldest. */
function remembered(mesh: Mesh, body: Manifold): Mesh {
  bodiesOfMeshes.set(mesh, body.translate(0, 0, 0));
  for (const [oldest, own] of bodiesOfMeshes) {
    if (bodiesOfMeshes.size <= REMEMBERED) break;
    own.delete();
    bodiesOfMeshes.delete(oldest);
  }
  return mesh;
}

/** Takes in a mesh whose triangles share their corners. */
function taken({ top, arena }: Workshop, mesh: Mesh): Manifold {
  const known = bodiesOfMeshes.get(mesh);
  if (known !== undefined) return arena(known.translate(0, 0, 0));
  const { positions, triangles } = mesh;
  const vertProperties = Float32Array.from(positions);
  return arena(new top.Manifold(new top.Mesh({ numProp: 3, vertProperties, triVerts: triangles })));
}

function revolve(shop: Workshop, { sections, fit, sizing, drawn }: Extract<Solid, { kind: "revolved" }>): Manifold {
  const { arena } = shop;
  const { CrossSection, Manifold } = shop.top;
  const sides = segments(sizing, shop.tolerance);
  const stretch = fit === "around" ? circumscribed(1, sides) : 1;
  const outlines = sections.map((points) => points.map(([radius, z]): [number, number] => [radius * stretch, z]));
  const [only, ...others] = outlines;
  const half =
    only !== undefined && others.length === 0
      ? only
      : arena(CrossSection.union(outlines.map((outline) => arena(new CrossSection([outline])))));
  const turned = arena(arena(Manifold.revolve(half, sides)).rotate(0, 0, 180 / sides));
  // No corner lies between the halves, since the flats face along the axes; only the axis itself stays.
  return drawn === 0 ? turned : arena(turned.warp((at) => drawOut(at, drawn)));
}

function lay(shop: Workshop, { profile, radius, height }: Extract<Solid, { kind: "laid" }>): Manifold {
  const flat = shop.arena(shop.top.Manifold.extrude(contoursOf(shop, profile).map(divided), height));
  return shop.arena(flat.warp((at) => layOn(at, radius)));
}

type Contours = [number, number][][];

/** Returns the contours of a profile: outlines counter-clockwise, holes clockwise. */
function contoursOf(shop: Workshop, profile: Profile): Contours {
  if (profile.kind === "polygon") return [profile.points.map(([x, y]): [number, number] => [x, y])];
  if (profile.kind === "disc") return [discOf(shop, profile) as [number, number][]];
  return sectionOf(shop, profile).toPolygons() as Contours;
}

function discOf(shop: Workshop, { radius, at, fit }: Extract<Profile, { kind: "disc" }>): Vec2[] {
  const sides = segments(radius, shop.tolerance);
  return ring(fit === "around" ? circumscribed(radius, sides) : radius, sides, at);
}

function sectionOf(shop: Workshop, profile: Profile): CrossSection {
  const { CrossSection } = shop.top;
  const { arena } = shop;
  const all = (profiles: readonly Profile[]) => profiles.map((part) => sectionOf(shop, part));
  switch (profile.kind) {
    case "polygon":
    case "disc":
      return arena(new CrossSection(contoursOf(shop, profile)));
    case "hull":
      return arena(CrossSection.hull(profile.parts.flatMap((part) => contoursOf(shop, part)).map((c) => [c])));
    case "union":
      // Polygons that overlap are united as they are read.
      return profile.parts.every((part) => part.kind === "polygon")
        ? arena(
            new CrossSection(
              profile.parts.flatMap((part) => contoursOf(shop, part)),
              "NonZero",
            ),
          )
        : arena(CrossSection.union(all(profile.parts)));
    case "common":
      return arena(CrossSection.intersection(all(profile.parts)));
    case "cut":
      return arena(CrossSection.difference([sectionOf(shop, profile.from), ...all(profile.tools)]));
    case "offset": {
      const sides = segments(Math.abs(profile.by), shop.tolerance);
      return arena(sectionOf(shop, profile.of).offset(profile.by, "Round", 2, sides));
    }
    case "simplified":
      return arena(sectionOf(shop, profile.of).simplify(profile.within));
    case "placed": {
      const turned = arena(sectionOf(shop, profile.of).rotate(profile.angle));
      return arena(turned.translate(profile.at[0], profile.at[1]));
    }
  }
}
