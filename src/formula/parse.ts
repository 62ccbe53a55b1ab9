// Text to tree. mathjs decides precedence and grouping and nothing else: it is never asked to
// compile or evaluate. Its tree carries no columns, so it is walked in the order of the text
// beside our own tokens; where the two disagree, the text is refused.

import { create, type MathNode, parseDependencies } from "mathjs/number";
import { isProblem, type Problem } from "../problem.ts";
import { type Quantity, quantity } from "../units/quantity.ts";
import { isFunctionName, takesSeveral } from "./functions.ts";
import { placed, refusal } from "./refusal.ts";
import { checkOrder } from "./token-order.ts";
import { type Token, tokenize } from "./tokens.ts";
import { isBinaryOperator, isComparison, type Tree } from "./tree.ts";

export { names } from "./tree.ts";

if (!parseDependencies) throw new Error("mathjs: parseDependencies is missing");
const reader = create({ parseDependencies });

export function parse(text: string): Tree | Problem {
  const line = text.trimEnd();
  const tokens = tokenize(line);
  if (isProblem(tokens)) return tokens;
  const order = checkOrder(tokens);
  if (order) return order;
  const node = readNode(line);
  if (isProblem(node)) return node;
  const walk = new Walk(tokens);
  const tree = walk.tree(node);
  return isProblem(tree) ? tree : (walk.leftOver() ?? tree);
}

function readNode(line: string): MathNode | Problem {
  try {
    return reader.parse(line);
  } catch (error) {
    // Not reached by any text we know of: the checks above are the stricter ones.
    const at = typeof error === "object" && error !== null && "char" in error ? Number(error.char) : 1;
    return refusal("formula-unreadable", at, {
      got: line.slice(at - 1, at + 11),
      must: "be ordinary arithmetic",
    });
  }
}

/** mathjs nodes as far as they are read here. */
interface Node {
  readonly type: string;
  readonly op?: string;
  readonly args?: readonly Node[];
  readonly content?: Node;
  readonly condition?: Node;
  readonly trueExpr?: Node;
  readonly falseExpr?: Node;
}

class Walk {
  readonly #tokens: readonly Token[];
  #next = 0;

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
  }

  tree(node: Node): Tree | Problem {
    const args = node.args ?? [];
    switch (node.type) {
      case "ConstantNode":
      case "SymbolNode":
      case "AccessorNode":
        return this.#leaf();
      case "ParenthesisNode":
        return this.#bracketed(node.content);
      case "FunctionNode":
        return this.#call(args);
      case "ConditionalNode":
        return this.#choose(node);
      case "OperatorNode":
        return args.length === 1 ? this.#negate(args[0]) : this.#binary(args[0], args[1]);
      default:
        return this.#disagree();
    }
  }

  leftOver(): Problem | undefined {
    return this.#next < this.#tokens.length ? this.#disagree() : undefined;
  }

  #take(...types: Token["type"][]): Token | Problem {
    const token = this.#tokens[this.#next];
    if (!token || !types.includes(token.type)) return this.#disagree();
    this.#next++;
    return token;
  }

  #disagree(): Problem {
    const token = this.#tokens[this.#next];
    return refusal("formula-unreadable", token?.at ?? 1, {
      got: token?.text ?? "the end",
      must: "be ordinary arithmetic",
    });
  }

  #part(node: Node | undefined): Tree | Problem {
    return node ? this.tree(node) : this.#disagree();
  }

  #leaf(): Tree | Problem {
    const token = this.#take("number", "quantity", "name");
    if (isProblem(token)) return token;
    const { at, text } = token;
    if (token.type === "number") return { type: "number", value: Number(text), text, at };
    if (token.type === "quantity") {
      const read = readQuantity(text, at);
      return isProblem(read) ? read : { type: "quantity", quantity: read, at };
    }
    if (text === "pi") return { type: "constant", name: "pi", at };
    const [name = text, output] = text.split(".");
    return output === undefined ? { type: "name", name, at } : { type: "name", name, output, at };
  }

  #bracketed(content: Node | undefined): Tree | Problem {
    const open = this.#take("(");
    if (isProblem(open)) return open;
    const tree = this.#part(content);
    const close = this.#take(")");
    return isProblem(tree) || !isProblem(close) ? tree : close;
  }

  #negate(operand: Node | undefined): Tree | Problem {
    const sign = this.#take("minus");
    if (isProblem(sign)) return sign;
    const of = this.#part(operand);
    return isProblem(of) ? of : { type: "negate", of, at: sign.at };
  }

  #binary(leftNode: Node | undefined, rightNode: Node | undefined): Tree | Problem {
    const left = this.#part(leftNode);
    if (isProblem(left)) return left;
    const operator = this.#take("binary", "minus", "compare");
    if (isProblem(operator)) return operator;
    const right = this.#part(rightNode);
    if (isProblem(right)) return right;
    const { at, text } = operator;
    if (isComparison(text)) return { type: "compare", op: text, left, right, at };
    return isBinaryOperator(text) ? { type: "binary", op: text, left, right, at } : this.#disagree();
  }

  #choose(node: Node): Tree | Problem {
    const test = this.#part(node.condition);
    if (isProblem(test)) return test;
    const asked = this.#take("?");
    if (isProblem(asked)) return asked;
    const yes = this.#part(node.trueExpr);
    if (isProblem(yes)) return yes;
    const otherwise = this.#take(":");
    if (isProblem(otherwise)) return otherwise;
    const no = this.#part(node.falseExpr);
    return isProblem(no) ? no : { type: "choose", test, yes, no, at: asked.at };
  }

  #call(nodes: readonly Node[]): Tree | Problem {
    const called = this.#take("name");
    if (isProblem(called)) return called;
    const open = this.#take("(");
    if (isProblem(open) || !isFunctionName(called.text)) return this.#disagree();
    const args: Tree[] = [];
    for (const node of nodes) {
      const comma = args.length > 0 ? this.#take(",") : undefined;
      if (isProblem(comma)) return comma;
      const arg = this.tree(node);
      if (isProblem(arg)) return arg;
      args.push(arg);
    }
    const close = this.#take(")");
    if (isProblem(close)) return close;
    const several = takesSeveral(called.text);
    if (several ? args.length < 2 : args.length !== 1) {
      return refusal("formula-arguments", called.at, {
        got: `${called.text} with ${args.length} argument${args.length === 1 ? "" : "s"}`,
        must: several ? "have two or more" : "have one",
        ...argumentHint(called.text),
      });
    }
    return { type: "call", name: called.text, args, at: called.at };
  }
}

function argumentHint(name: string): { hint?: string } {
  if (name === "round") return { hint: 'to round to a step, write round(x / "0.1 mm") * "0.1 mm"' };
  if (name === "min") return { hint: "over a column use smallest" };
  if (name === "max") return { hint: "over a column use largest" };
  return {};
}

function readQuantity(text: string, at: number): Quantity | Problem {
  const read = quantity(text);
  if (isProblem(read)) return placed(read, at);
  if (read.spread) {
    return refusal("formula-spread", at, {
      got: text,
      must: "be one value",
      hint: "give it as an item of the page, where a spread has a meaning",
    });
  }
  return read;
}
