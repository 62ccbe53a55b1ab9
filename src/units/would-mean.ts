// A bare number is never guessed; it is answered with what it would mean in each usual unit.
import { isProblem } from "../problem.ts";
import { convertTo } from "./convert.ts";
import { type Kind, kinds } from "./kind.ts";
import { readNumber } from "./number-text.ts";
import { multiply } from "./rational.ts";
import { inSi } from "./typed.ts";
import { unit } from "./unit.ts";

export interface Meaning {
  readonly unit: string;
  readonly kind: Kind;
  /** "140 lbf.ft = 189.8 N.m" */
  readonly text: string;
}

const asked: readonly Kind[] = ["torque", "length", "force", "pressure", "temperature"];

/** Empty when the text is not a number. */
export function wouldMean(number: string, of: readonly Kind[] = asked): readonly Meaning[] {
  const typed = number.trim();
  const read = readNumber(typed, 0);
  if (read === undefined || isProblem(read) || read.end !== typed.length) return [];
  return of.flatMap((kind) =>
    kinds[kind].usual.flatMap((name, place) => {
      const own = unit(name, kind);
      const other = unit(kinds[kind].usual[place === 0 ? 1 : 0] ?? name, kind);
      if (isProblem(own) || isProblem(other)) return [];
      const answer =
        other.text === own.text
          ? ""
          : ` = ${convertTo({ exact: inSi(read.value, own), ...(read.step && { step: multiply(read.step, own.factor) }) }, other).text}`;
      return [{ unit: own.text, kind, text: `${typed} ${own.text}${answer}` }];
    }),
  );
}
