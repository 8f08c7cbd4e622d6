import { readFile } from "node:fs/promises";

const IMPORTED = 'const{createRequire}=await import("node:module");var require=createRequire(import.meta.url)';
/** Asked for at run time, and only where there is Node: a bundler for pages does not see it. */
const ASKED = "var require=globalThis.process.getBuiltinModule";

/** Takes the one import of Node out of the kernel's loader. */
export const kernelAnywhere = {
  name: "kernel-anywhere",
  setup: ({ onLoad }) => {
    onLoad({ filter: /manifold-3d[\\/]manifold\.js$/ }, async ({ path }) => {
      const contents = await readFile(path, "utf8");
      if (!contents.includes(IMPORTED)) throw new Error("the kernel's loader imports Node in another way than before");
      return { contents: contents.replace(IMPORTED, ASKED), loader: "js" };
    });
  },
};
