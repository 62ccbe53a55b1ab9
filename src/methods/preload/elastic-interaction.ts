// What is left in each bolt after its neighbours were tightened?
import { isProblem, type Problem, problem } from "../../problem.ts";
import { cellNumber, cellText, columnNumbers, type Row, rowsOf, textOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { interaction } from "../sources.ts";
import { evenLoads, passResiduals } from "./elastic-loads.ts";

/** Pairs named one by one. */
function namedChanges(order: readonly string[], rows: readonly Row[]): number[][] | Problem {
  const changes = order.map(() => order.map(() => 0));
  const given = new Set<string>();
  for (const [index, row] of rows.entries()) {
    const names = ["position", "by"].map((column) => cellText(row, column) ?? "");
    const [affected = -1, tightened = -1] = names.map((name) => order.indexOf(name));
    const line = changes[affected];
    const key = names.join(" by ");
    const wrong = names.find((name) => !order.includes(name));
    if (wrong !== undefined || !line || affected === tightened || given.has(key))
      return problem({
        code: "odd-position",
        what: `coefficients ${index + 1}`,
        got: wrong === undefined ? key : `position ${wrong}`,
        must: "name two different positions of the order, each pair once",
      });
    given.add(key);
    line[tightened] = cellNumber(row, "change") ?? Number.NaN;
  }
  return changes;
}

/** One coefficient for all pairs so many places apart; positions are numbered in line or round the circle. */
function neighbourChanges(
  order: readonly string[],
  rows: readonly Row[],
  circle: boolean,
): number[][] | Problem {
  const word = order.find((position) => !/^\d+$/.test(position));
  if (word !== undefined)
    return problem({
      code: "odd-position",
      what: "order",
      got: word,
      must: "hold whole numbers where coefficients go by places apart",
      hint: "or give coefficients pair by pair",
    });
  const most = Math.max(1, circle ? Math.floor(order.length / 2) : order.length - 1);
  const beyond = rows.findIndex((row) => (cellNumber(row, "apart") ?? 0) > most);
  if (beyond >= 0)
    return problem({
      code: "not-used",
      what: `neighbours ${beyond + 1}`,
      got: `${cellNumber(rows[beyond] ?? {}, "apart")} places apart`,
      must: `be at most ${most} for ${order.length} positions in a ${circle ? "circle" : "line"}`,
      why: "no two bolts are so far apart",
    });
  const far = new Map(rows.map((row) => [cellNumber(row, "apart"), cellNumber(row, "change") ?? Number.NaN]));
  const places = order.map(Number);
  return places.map((affected) =>
    places.map((tightened) => {
      const straight = Math.abs(affected - tightened);
      const apart = circle ? Math.min(straight, order.length - straight) : straight;
      return apart === 0 ? 0 : (far.get(apart) ?? 0);
    }),
  );
}

function changesOf(inputs: Insides, order: readonly string[]): number[][] | Problem {
  const [pairs, neighbours] = [rowsOf(inputs, "coefficients"), rowsOf(inputs, "neighbours")];
  if (pairs.length > 0 === neighbours.length > 0)
    return problem({
      code: pairs.length > 0 ? "given-twice" : "missing-input",
      what: "coefficients",
      got: pairs.length > 0 ? "pairs and neighbours" : "nothing",
      must: "be given as coefficients or as neighbours",
      why: "none are supplied here: they belong to the joint and its gasket",
      hint: "measure them: tighten one bolt and see what its neighbours lose",
    });
  if (pairs.length > 0) return namedChanges(order, pairs);
  return neighbourChanges(order, neighbours, textOf(inputs, "arrangement") === "circle");
}

function run(inputs: Insides): Insides | Problem {
  const order = rowsOf(inputs, "order").map((row) => cellText(row, "position") ?? "");
  const twice = order.find((position, index) => order.indexOf(position) !== index);
  if (twice !== undefined)
    return problem({
      code: "tag-twice",
      what: "order",
      got: `${twice} twice`,
      must: "name each position once",
    });
  const changes = changesOf(inputs, order);
  if (isProblem(changes)) return changes;
  const passLoads = columnNumbers(rowsOf(inputs, "passLoads"), "load");
  const passes = passResiduals(
    changes,
    passLoads.map((load) => order.map(() => load)),
  );
  const name = (pass: number) => `pass ${pass + 1}`;
  return {
    residual: passes.flatMap((loads, pass) =>
      loads.map((residual, turn): Row => ({ pass: name(pass), position: order[turn] ?? "", residual })),
    ),
    spread: passes.map(
      (loads, pass): Row => ({
        pass: name(pass),
        least: Math.min(...loads),
        most: Math.max(...loads),
        average: loads.reduce((sum, load) => sum + load, 0) / loads.length,
      }),
    ),
    compensated: evenLoads(changes, passLoads.at(-1) ?? Number.NaN).map(
      (load, turn): Row => ({
        position: order[turn] ?? "",
        load,
      }),
    ),
  };
}

export const elasticInteraction = method({
  id: "elastic-interaction",
  question: "What is left in each bolt after its neighbours were tightened?",
  inputs: {
    order: {
      kind: "list",
      says: "positions in the order of tightening",
      of: { position: { kind: "text", says: "position" } },
    },
    coefficients: {
      kind: "list",
      says: "coefficients pair by pair; pairs left out do not act on each other",
      optional: true,
      of: {
        position: { kind: "text", says: "bolt that changes" },
        by: { kind: "text", says: "bolt that is tightened" },
        change: {
          kind: "ratio",
          symbol: "a",
          says: "change of load for each unit put in, negative for loss",
        },
      },
    },
    neighbours: {
      kind: "list",
      says: "coefficients by places apart, in place of pairs",
      optional: true,
      unique: ["apart"],
      of: {
        apart: { kind: "count", symbol: "k", says: "places apart, by position number" },
        change: {
          kind: "ratio",
          symbol: "a",
          says: "change of load for each unit put in, negative for loss",
        },
      },
    },
    arrangement: {
      kind: "text",
      says: "how positions are numbered, for places apart",
      choices: ["circle", "line"],
      default: "circle",
    },
    passLoads: {
      kind: "list",
      says: "load each bolt is brought to, pass by pass",
      of: { load: { kind: "force", symbol: "F_p", says: "load in the pass" } },
    },
    loadLimit: { kind: "force", symbol: "F_lim", says: "largest load a bolt may see", optional: true },
  },
  procedure: {
    says: "each load put in changes the bolts that are tight already; the loads of one pass that end even are solved back from the last bolt",
    source: interaction,
    reads: (inputs) => [
      "order",
      "passLoads",
      "coefficients",
      ...(rowsOf(inputs, "neighbours").length > 0 ? ["neighbours", "arrangement"] : []),
    ],
    givesRows: {
      spread: {
        average: { kind: "force", symbol: "F_m" },
      },
    },
    run,
  },
  each: { spread: { spread: "(most - least) / average" } },
  outputs: {
    residual: {
      kind: "list",
      says: "load left at the end of each pass",
      of: {
        pass: { kind: "text", says: "pass" },
        position: { kind: "text", says: "position" },
        residual: { kind: "force", symbol: "F_r", says: "load left" },
      },
    },
    spread: {
      kind: "list",
      says: "spread at the end of each pass",
      of: {
        pass: { kind: "text", says: "pass" },
        least: { kind: "force", symbol: "F_min", says: "least load left" },
        most: { kind: "force", symbol: "F_max", says: "largest load left" },
        spread: { kind: "ratio", symbol: "s", says: "largest less least, over the mean" },
      },
    },
    compensated: {
      kind: "list",
      says: "loads of a single pass that leave the last load in every bolt",
      of: {
        position: { kind: "text", says: "position" },
        load: { kind: "force", symbol: "F_c", says: "load to bring it to" },
      },
    },
  },
  limits: [
    { that: 'smallest(passLoads.load) > "0 kN"', else: "nothing is tightened" },
    { that: "smallest(coefficients.change) > -1", else: "no bolt loses more than its neighbour gains" },
    { that: "largest(coefficients.change) < 1", else: "no bolt gains more than its neighbour" },
    { that: "smallest(neighbours.change) > -1", else: "no bolt loses more than its neighbour gains" },
    { that: "largest(neighbours.change) < 1", else: "no bolt gains more than its neighbour" },
    { that: "smallest(neighbours.apart) >= 1", else: "a bolt is no neighbour of itself" },
    {
      that: 'smallest(residual.residual) > "0 kN"',
      else: "a bolt would go slack, and the linear relation ends there",
      hint: "smaller steps between passes",
      warn: "spoils",
    },
    {
      that: "largest(compensated.load) <= loadLimit",
      else: "an even load in one pass would overload a bolt on the way",
      hint: "take more passes",
      warn: "advice",
    },
  ],
  sources: { "*": interaction },
  notes: [
    "no coefficients are supplied: none were found in print, they belong to the joint",
    "linear: gaskets that creep or seat need a second measured pass",
  ],
});
