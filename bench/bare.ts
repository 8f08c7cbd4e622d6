import Module, { type Manifold } from "manifold-3d";
import { divided, drawOut, layOn } from "../src/geometry/corner-moves.ts";
import { footedPrism } from "../src/geometry/footed-prism.ts";
import { joined, type Profile, polygon } from "../src/geometry/profile.ts";
import { CHORD_TOLERANCE, circumscribed, ring, segments } from "../src/geometry/segments.ts";
import type { Solid } from "../src/geometry/solid.ts";
import { stepTools } from "../src/geometry/step-tools.ts";

export const top = await Module();
top.setup();

type Contours = [number, number][][];

/** A solid with every profile already worked out: what is left is the kernel's own 3D work. */
export type Prepared = (keep: (handle: Manifold) => Manifold) => Manifold;

/** Returns the contours of a profile, made straight with the kernel; nothing is freed, since it runs once. */
export function contours(profile: Profile): Contours {
  return section(profile).toPolygons() as Contours;
}

function section(profile: Profile): InstanceType<typeof top.CrossSection> {
  const { CrossSection } = top;
  switch (profile.kind) {
    case "polygon":
      return new CrossSection([profile.points as [number, number][]]);
    case "disc": {
      const sides = segments(profile.radius, CHORD_TOLERANCE);
      const corner = profile.fit === "around" ? circumscribed(profile.radius, sides) : profile.radius;
      return new CrossSection([ring(corner, sides, profile.at) as [number, number][]]);
    }
    case "hull":
      return CrossSection.hull(profile.parts.map(section));
    case "union":
      return CrossSection.union(profile.parts.map(section));
    case "common":
      return CrossSection.intersection(profile.parts.map(section));
    case "cut":
      return CrossSection.difference([section(profile.from), ...profile.tools.map(section)]);
    case "offset":
      return section(profile.of).offset(profile.by, "Round", 2, segments(Math.abs(profile.by)));
    case "simplified":
      return section(profile.of).simplify(profile.within);
    case "placed":
      return section(profile.of).rotate(profile.angle).translate(profile.at[0], profile.at[1]);
  }
}

/** Prepares a tree for timing: profiles are made once, here; the returned function does the 3D work only. */
export function prepare(solid: Solid): Prepared {
  const { Manifold, Mesh } = top;
  switch (solid.kind) {
    case "prism": {
      const { z0, z1, foot } = solid;
      const shape = contours(solid.profile);
      if (foot === 0) return (keep) => keep(keep(Manifold.extrude(shape, z1 - z0)).translate(0, 0, z0));
      return (keep) => {
        const { positions, triangles } = footedPrism(shape, z0, z1, foot, (outline) => top.triangulate(outline));
        const mesh = new Mesh({ numProp: 3, vertProperties: Float32Array.from(positions), triVerts: triangles });
        return keep(new Manifold(mesh));
      };
    }
    case "revolved": {
      const sides = segments(solid.sizing);
      const stretch = solid.fit === "around" ? circumscribed(1, sides) : 1;
      const half = joined(
        ...solid.sections.map((points) => polygon(points.map(([r, z]): [number, number] => [r * stretch, z]))),
      );
      const outlines = contours(half);
      return (keep) => {
        const turned = keep(keep(Manifold.revolve(outlines, sides)).rotate(0, 0, 180 / sides));
        return solid.drawn === 0 ? turned : keep(turned.warp((at) => drawOut(at, solid.drawn)));
      };
    }
    case "meshed":
      throw new Error("a part is drawn as a tree");
    case "laid": {
      const { radius, height } = solid;
      const outlines = contours(solid.profile).map(divided);
      return (keep) => keep(keep(Manifold.extrude(outlines, height)).warp((at) => layOn(at, radius)));
    }
    case "placed": {
      const of = prepare(solid.of);
      const [a, b, c, d, e, f, g, h, i, j, k, l] = solid.placement;
      return (keep) => keep(of(keep).transform([a, e, i, 0, b, f, j, 0, c, g, k, 0, d, h, l, 1]));
    }
    case "cut": {
      const [from, tools] = [prepare(solid.from), stepTools(solid.tools).map(prepare)];
      return (keep) => keep(Manifold.difference([from(keep), ...tools.map((tool) => tool(keep))]));
    }
    default: {
      const parts = solid.parts.map(prepare);
      const join = { hull: Manifold.hull, union: Manifold.union, common: Manifold.intersection }[solid.kind];
      return (keep) => keep(join(parts.map((part) => part(keep))));
    }
  }
}

/** Runs a prepared solid to its mesh and frees what it made; returns the facet count and volume. */
export function runBare(prepared: Prepared): { facets: number; volume: number } {
  const handles: Manifold[] = [];
  const body = prepared((handle) => {
    handles.push(handle);
    return handle;
  });
  const answer = { facets: body.getMesh().triVerts.length / 3, volume: body.volume() };
  for (const handle of handles) handle.delete();
  return answer;
}
