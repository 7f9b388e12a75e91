import { all, create, type MathNode } from "mathjs";

/** A number, or a list that is worked on element by element. */
export type NumberOrList = number | readonly number[];

/**
 * Evaluates a formula's text with a parser and arithmetic that share nothing with the app.
 * Throws Error where the text uses anything but what a formula may use, where a name has no value, where lists in one
 * operation differ in length, and where the result is not a finite number.
 */
export function evaluateText(text: string, values: Readonly<Record<string, NumberOrList>>): number {
  for (const name of namesIn(text)) {
    if (!Object.hasOwn(values, name)) throw new Error(`"${text}" has no value for ${name}`);
  }
  const result: unknown = parsed(text).evaluate({ ...values, ...SCOPE });
  if (typeof result !== "number" || !Number.isFinite(result)) {
    throw new Error(`"${text}" gives ${String(result)} from ${JSON.stringify(values)}`);
  }
  return result;
}

/** The names that a formula's text asks values for, each once, in the order met. */
export function namesIn(text: string): readonly string[] {
  const names = new Set<string>();
  parsed(text).traverse((node, path) => {
    if (math.isSymbolNode(node) && path !== "fn" && !Object.hasOwn(SCOPE, node.name)) names.add(node.name);
  });
  return [...names];
}

const math = create(all!, { matrix: "Array" });

const OPERATORS: Readonly<Record<string, string>> = {
  add: "eachAdd",
  subtract: "eachSubtract",
  multiply: "eachMultiply",
  divide: "eachDivide",
  pow: "eachPower",
  unaryMinus: "eachMinus",
};

/** Functions of one argument. Whole-number functions are the plain ones: the library's own forgive the last digits. */
const ONE_ARGUMENT = {
  sqrt: each(Math.sqrt),
  abs: each(Math.abs),
  ceil: each(Math.ceil),
  floor: each(Math.floor),
  round: each(Math.round),
  exp: each(Math.exp),
  ln: each(Math.log),
  sin: each(Math.sin),
  cos: each(Math.cos),
  tan: each(Math.tan),
};

const SCOPE = {
  ...ONE_ARGUMENT,
  sum: (list: readonly number[]): unknown => (list.length === 0 ? 0 : math.sum([...list])),
  min: (...of: readonly NumberOrList[]): unknown => math.min(of.flat()),
  max: (...of: readonly NumberOrList[]): unknown => math.max(of.flat()),
  pi: Math.PI,
  eachAdd: both((a, b) => math.add(a, b)),
  eachSubtract: both((a, b) => math.subtract(a, b)),
  eachMultiply: both((a, b) => math.multiply(a, b)),
  eachDivide: both((a, b) => math.divide(a, b)),
  eachPower: both((a, b) => Number(math.pow(a, b))),
  eachMinus: each((a) => math.unaryMinus(a)),
};

const FUNCTIONS = new Set([...Object.keys(ONE_ARGUMENT), "sum", "min", "max"]);

const parsedTexts = new Map<string, MathNode>();

function parsed(text: string): MathNode {
  const known = parsedTexts.get(text);
  if (known !== undefined) return known;
  const tree = math.parse(text);
  tree.traverse((node) => refuseStrange(node, text));
  const ready = elementwise(tree);
  parsedTexts.set(text, ready);
  return ready;
}

/** The tree with functions over lists in the place of operators, which the library would read as those of matrices. */
function elementwise(node: MathNode): MathNode {
  const inside = node.map(elementwise);
  const name = math.isOperatorNode(inside) ? OPERATORS[inside.fn] : undefined;
  return math.isOperatorNode(inside) && name !== undefined ? new math.FunctionNode(name, inside.args) : inside;
}

/** Keeps texts to what `Formula` promises, so that every reader of a printed working reads it the same way. */
function refuseStrange(node: MathNode, text: string): void {
  const refuse = (what: string): never => {
    throw new Error(`"${text}" uses ${what}, which a formula's text may not`);
  };
  if (math.isOperatorNode(node)) {
    if (!Object.hasOwn(OPERATORS, node.fn)) refuse(`the operator ${node.op}`);
    if (node.implicit) refuse("a product without its sign");
  } else if (math.isFunctionNode(node)) {
    const name = node.fn.name;
    if (!FUNCTIONS.has(name)) refuse(`the function ${name}()`);
    if (node.args.length === 0) refuse(`${name}() without an argument`);
    if (name !== "min" && name !== "max" && node.args.length > 1) refuse(`${name}() with more than one argument`);
  } else if (math.isConstantNode(node)) {
    if (typeof node.value !== "number") refuse(`the constant ${String(node.value)}`);
  } else if (!math.isSymbolNode(node) && !math.isParenthesisNode(node)) {
    refuse(`a part of kind ${node.type}`);
  }
}

function each(work: (a: number) => number): (a: NumberOrList) => NumberOrList {
  return (a) => (typeof a === "number" ? work(a) : a.map(work));
}

function both(work: (a: number, b: number) => number): (a: NumberOrList, b: NumberOrList) => NumberOrList {
  return (a, b) => {
    if (typeof a === "number") return typeof b === "number" ? work(a, b) : b.map((one) => work(a, one));
    if (typeof b === "number") return a.map((one) => work(one, b));
    if (a.length !== b.length) throw new Error(`lists of ${a.length} and ${b.length} numbers in one operation`);
    return a.map((one, at) => work(one, b[at]!));
  };
}
