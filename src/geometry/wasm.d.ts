// The part of WebAssembly's JavaScript interface (W3C) that is used here; the language's own library leaves it out.
declare namespace WebAssembly {
  interface Instance {
    readonly exports: object;
  }
  const Instance: new (module: Module, imports: object) => Instance;
  function compile(bytes: Uint8Array): Promise<Module>;
}
