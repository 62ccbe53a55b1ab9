// Which token may follow which. The parser would read "2 x" as a product, "a < b < c" as a range
// test and "a : b" as a sequence; here each is refused at its column.

import type { Problem } from "../problem.ts";
import {
  columnFunctions,
  isFunctionName,
  isOtherStatistic,
  isScalarFunction,
  likelyFunction,
  scalarFunctions,
} from "./functions.ts";
import { refusal } from "./refusal.ts";
import type { Token } from "./tokens.ts";

const deepestBrackets = 50;

/** An open bracket, or the whole text. Rules that hold "at one level" are kept here. */
interface Level {
  readonly open: Token | undefined;
  readonly isCall: boolean;
  compared: boolean;
  /** A "?" that still waits for its ":". */
  asked: Token | undefined;
}

interface State {
  readonly levels: Level[];
  level: Level;
  wantsValue: boolean;
}

const startsValue: ReadonlySet<Token["type"]> = new Set(["number", "quantity", "name", "("]);

/** The first thing out of order, or undefined when the parser may read the text. */
export function checkOrder(tokens: readonly Token[]): Problem | undefined {
  const last = tokens.at(-1);
  if (!last) return refusal("formula-empty", 1, { got: "nothing", must: "be an expression" });
  const level: Level = { open: undefined, isCall: false, compared: false, asked: undefined };
  const state: State = { levels: [level], level, wantsValue: true };
  for (const [i, token] of tokens.entries()) {
    const found = state.wantsValue
      ? value(state, token, tokens[i - 1], tokens[i + 1])
      : connector(state, token, tokens[i - 1]);
    if (found) return found;
  }
  if (state.wantsValue) return missingValue(last.at + last.text.length, "the end", last);
  if (state.level.open) {
    return refusal("formula-bracket", state.level.open.at, {
      got: 'a "(" that is not closed',
      must: 'be closed by ")"',
    });
  }
  return unanswered(state.level);
}

function value(
  state: State,
  token: Token,
  before: Token | undefined,
  next: Token | undefined,
): Problem | undefined {
  switch (token.type) {
    case "number":
    case "quantity":
      state.wantsValue = false;
      return undefined;
    case "minus":
      return undefined;
    case "name":
      return name(state, token, next);
    case "(":
      return open(state, token, before?.type === "name");
    case ")":
      if (before?.type === "(" && state.level.isCall) {
        return refusal("formula-arguments", token.at, { got: "no argument", must: "have an argument" });
      }
      return missingValue(token.at, '")"', before);
    default:
      if (token.text === "+") {
        return refusal("formula-sign", token.at, {
          got: 'a leading "+"',
          must: "have a value on its left",
          hint: "leave the plus out",
        });
      }
      return missingValue(token.at, `"${token.text}"`, before);
  }
}

function name(state: State, token: Token, next: Token | undefined): Problem | undefined {
  if (next?.type === "(") {
    if (isFunctionName(token.text)) return undefined; // the bracket is read next, as a call
    return unknownFunction(token);
  }
  if (isScalarFunction(token.text)) {
    return refusal("formula-arguments", token.at, {
      got: `${token.text} without brackets`,
      must: `be written ${token.text}( )`,
    });
  }
  state.wantsValue = false;
  return undefined;
}

function open(state: State, token: Token, isCall: boolean): Problem | undefined {
  if (state.levels.length > deepestBrackets) {
    return refusal("formula-too-deep", token.at, {
      got: `more than ${deepestBrackets} brackets in each other`,
      must: `have at most ${deepestBrackets}`,
    });
  }
  state.level = { open: token, isCall, compared: false, asked: undefined };
  state.levels.push(state.level);
  return undefined;
}

function connector(state: State, token: Token, before: Token | undefined): Problem | undefined {
  if (startsValue.has(token.type)) return implicitProduct(token, before);
  switch (token.type) {
    case ")":
      return close(state, token);
    case ",":
      if (!state.level.isCall) {
        return refusal("formula-comma", token.at, {
          got: '","',
          must: "separate arguments of a function",
          hint: "decimals take a point",
        });
      }
      return startPart(state);
    case "?":
      if (state.level.asked) {
        return refusal("formula-choice", token.at, {
          got: 'a second "?" before ":"',
          must: "stand in brackets",
          hint: "write a > b ? (c > d ? e : f) : g",
        });
      }
      state.level.asked = token;
      return startPart(state, true);
    case ":":
      if (!state.level.asked) {
        return refusal("formula-range", token.at, {
          got: '":"',
          must: 'follow a "?"',
          hint: "ranges are not part of a formula; a choice is a > b ? c : d",
        });
      }
      state.level.asked = undefined;
      return startPart(state);
    case "compare":
      if (state.level.compared) {
        return refusal("formula-chained-comparison", token.at, {
          got: `a second comparison "${token.text}"`,
          must: "compare two values",
          hint: "make two checks, or one check with between",
        });
      }
      state.level.compared = true;
      break;
  }
  state.wantsValue = true;
  return undefined;
}

/** After ",", "?" and ":" a new part begins, which may hold a comparison of its own. */
function startPart(state: State, insideChoice = false): Problem | undefined {
  const open = insideChoice ? undefined : unanswered(state.level);
  if (open) return open;
  state.level.compared = false;
  state.wantsValue = true;
  return undefined;
}

function close(state: State, token: Token): Problem | undefined {
  const open = unanswered(state.level);
  if (open) return open;
  if (!state.level.open)
    return refusal("formula-bracket", token.at, { got: 'a ")" too many', must: 'have a "(" before it' });
  state.levels.pop();
  state.level = state.levels.at(-1) ?? state.level;
  return undefined;
}

function unanswered(level: Level): Problem | undefined {
  return (
    level.asked &&
    refusal("formula-choice", level.asked.at, {
      got: 'a "?" without ":"',
      must: "give both values: a > b ? c : d",
    })
  );
}

function missingValue(at: number, got: string, before: Token | undefined): Problem {
  const doubled = got === '"*"' && before?.text === "*";
  return refusal("formula-missing-value", at, {
    got,
    must: before ? `have a value after "${before.text}"` : "begin with a value",
    ...(doubled ? { hint: "a power is written ^", suggestions: ["^"] } : {}),
  });
}

function implicitProduct(token: Token, before: Token | undefined): Problem {
  const shown = (t: Token | undefined): string => (t?.type === "quantity" ? `"${t.text}"` : (t?.text ?? ""));
  const bothNumbers = before?.type === "number" && token.type === "number";
  const unitLike = before?.type === "number" && token.type === "name";
  return refusal("formula-implicit-product", token.at, {
    got: `${shown(before)} ${shown(token)}`,
    must: "have an operator between",
    hint: bothNumbers
      ? "write digits without gaps"
      : `write * for a product${unitLike ? `; a quantity stands in quotes: "${shown(before)} ${token.text}"` : ""}`,
  });
}

function unknownHint(name: string, likely: string | undefined): string {
  if (isOtherStatistic(name)) return `there is no ${name} here`;
  return likely === undefined ? "for a product write *" : `did you mean ${likely}`;
}

function unknownFunction(token: Token): Problem {
  const likely = likelyFunction(token.text);
  const known = likely !== undefined && isFunctionName(likely);
  return refusal("formula-unknown-function", token.at, {
    got: `${token.text}( )`,
    must: `be one of ${[...scalarFunctions, ...columnFunctions].join(", ")}`,
    hint: unknownHint(token.text, likely),
    ...(known ? { suggestions: [likely] } : {}),
  });
}
