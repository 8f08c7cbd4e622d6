declare module "@jscad/stl-serializer/CSGToStlb.js" {
  /** The package's binary writer without its preceding clean-up: header, facet count, facets. */
  export function serializeBinary(solids: readonly unknown[], options: object): ArrayBuffer[];
}
