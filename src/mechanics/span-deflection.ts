import { bounded } from "./bounded.ts";

/** Deflection of a span, pressed at its middle, at which belt makers state the force of the right tension. */
export const spanDeflection = bounded({
  name: "span-deflection",
  title: "Deflection of a span for setting its tension",
  inputs: { span: { symbol: "l", unit: "mm", meaning: "length of the span" } },
  results: { deflection: { symbol: "q", unit: "mm", meaning: "deflection at the middle" } },
  formulas: { deflection: "l / 64" },
  source: "belt-makers: tensioning rule, from memory",
  valid: "free span pressed at its middle with the force stated for the belt",
  examples: [
    {
      given: { span: 100 },
      gives: { deflection: 1.56 },
      within: 2e-3,
      source: "belt-makers: tensioning rule, own numbers",
    },
  ],
  limits: { span: { above: 0 } },
  compute: ({ span }) => ({ deflection: span / 64 }),
});
