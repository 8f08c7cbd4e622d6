import { all, create, type MathNode } from "mathjs/number";
import { FORMULA_FUNCTIONS } from "../../src/core/formula.ts";

const math = create(all ?? {}, {});
const NODES = new Set(["ConstantNode", "SymbolNode", "OperatorNode", "ParenthesisNode", "FunctionNode"]);
const OPERATORS = new Set(["add", "subtract", "multiply", "divide", "pow", "unaryMinus", "unaryPlus"]);

/**
 * Returns the value of a printed formula. It knows + - * / ^, brackets, numbers, `pi`, the functions of formula.ts and
 * the symbols it is given; anything else throws, so a formula cannot lean on what the library knows besides.
 */
export function evaluateFormula(formula: string, values: Readonly<Record<string, number>>): number {
  const tree = math.parse(formula);
  tree.traverse((node, path, parent) => {
    const wrong = complaint(node, path, parent, values);
    if (wrong !== undefined) throw new Error(`${formula}: ${wrong}`);
  });
  const result: unknown = tree
    .compile()
    .evaluate(new Map(Object.entries({ ...FORMULA_FUNCTIONS, pi: Math.PI, ...values })));
  if (typeof result !== "number") throw new Error(`${formula}: gives no plain number`);
  return result;
}

function complaint(
  node: MathNode,
  path: string,
  parent: MathNode | undefined,
  values: Readonly<Record<string, number>>,
): string | undefined {
  if (!NODES.has(node.type)) return `${node.type} is not allowed`;
  if (math.isOperatorNode(node) && !OPERATORS.has(node.fn)) return `operator ${node.op} is not allowed`;
  if (math.isFunctionNode(node) && !(node.fn.name in FORMULA_FUNCTIONS)) return `unknown function ${node.fn.name}`;
  if (!math.isSymbolNode(node)) return undefined;
  if (parent !== undefined && math.isFunctionNode(parent) && path === "fn") return undefined;
  return node.name === "pi" || node.name in values ? undefined : `unknown symbol ${node.name}`;
}
