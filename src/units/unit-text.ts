// The grammar of a unit: factor (product sign factor)* (/ factor)*, brackets allowed, no product after a slash
// outside brackets. Hyphen, dot, middle dot, asterisk and space are all products; the dot of "in." is none.
import { isProblem, type Problem, problem } from "../problem.ts";
import { type Found, findAtom, sameButForCase } from "./find-atom.ts";

export interface Factor {
  readonly found: Found;
  readonly exponent: number;
}

/** Trade forms seen on the way, each a reason to show how the text was read. */
type Habit = "capitals" | "squashed" | "kilopond first" | "flat exponent" | "joining hyphen" | "number sign";

export interface Parsed {
  readonly factors: readonly Factor[];
  readonly habits: ReadonlySet<Habit>;
}

const token = /([A-Za-z_°%‰'"#$]+)|(\d+)|(\^|\*\*)|([/()])|([-·*. \u2009]+)/y;

/** One sign, blanks around it; "in.-lb" ends an abbreviation first. */
const productSign = /^[ \u2009]*(?:[·*-]|\.[ \u2009]?-?)?[ \u2009]*$/;

type Token = { readonly type: "word" | "digits" | "power" | "mark" | "product"; readonly text: string };

const types = ["word", "digits", "power", "mark", "product"] as const;

function tokens(text: string): readonly Token[] | Problem {
  const list: Token[] = [];
  token.lastIndex = 0;
  while (token.lastIndex < text.length) {
    const at = token.lastIndex;
    const match = token.exec(text);
    if (!match) return unreadable(text, `has "${text[at]}"`);
    const type = types[match.slice(1).findIndex((part) => part !== undefined)];
    if (type === "product" && !productSign.test(match[0])) return unreadable(text, `has "${match[0]}"`);
    if (type) list.push({ type, text: match[0] });
  }
  return list;
}

const unreadable = (text: string, why: string): Problem =>
  problem({
    code: "unit-not-readable",
    what: "unit",
    got: `"${text}"`,
    must: "be units joined by a product sign or a slash, such as N.m or kgf/cm2",
    why,
  });

/** Suggestions are the whole text with that word put right. */
function unknownUnit(word: string, text: string): Problem {
  const near = sameButForCase(word);
  return problem({
    code: "unknown-unit",
    what: "unit",
    got: `"${word}", not a known unit`,
    must: "be a unit such as N.m, mm or degC",
    why: near.length > 0 ? "capitals and small letters are different units" : undefined,
    suggestions: near
      .map((right) => text.replace(word, () => right))
      .filter((right) => !isProblem(parseUnitText(right))),
  });
}

export function parseUnitText(text: string): Parsed | Problem {
  const list = tokens(text.trim().replace(/^1 ?\/ ?/, "/"));
  return isProblem(list) ? list : new UnitReader(text, list).read();
}

class UnitReader {
  private at = 0;
  private problem: Problem | undefined;
  private readonly factors: Factor[] = [];
  private readonly habits = new Set<Habit>();
  private readonly text: string;
  private readonly list: readonly Token[];

  constructor(text: string, list: readonly Token[]) {
    this.text = text;
    this.list = list;
  }

  read(): Parsed | Problem {
    this.terms(1);
    if (!this.problem && this.at < this.list.length)
      this.fail(`"${this.list[this.at]?.text}" stands where it cannot`);
    if (!this.problem && this.factors.length === 0) this.fail("it is empty");
    return this.problem ?? { factors: this.factors, habits: this.habits };
  }

  private fail(why: string): void {
    this.problem ??= unreadable(this.text, why);
  }

  private next(): Token | undefined {
    return this.list[this.at];
  }

  /** Blanks and the dot of an abbreviation are no product where nothing follows to be multiplied. */
  private skipProduct(): Token | undefined {
    const item = this.next();
    if (item?.type !== "product") return undefined;
    this.at += 1;
    return item;
  }

  private skipBlanks(): void {
    const skipped = this.skipProduct();
    if (skipped && /[^ \u2009]/.test(skipped.text)) this.fail(`"${skipped.text}" multiplies nothing`);
  }

  private terms(sign: 1 | -1): void {
    let below = false;
    let product = true;
    // 3/8-in, as an adjective is hyphenated
    if (this.at === 0 && this.next()?.text === "-" && this.list[1]?.type === "word") {
      this.habits.add("joining hyphen");
      this.at += 1;
    } else this.skipBlanks();
    while (!this.problem) {
      const item = this.next();
      if (!item || item.text === ")") return;
      if (item.text === "/") {
        this.at += 1;
        this.skipBlanks();
        below = true;
        this.factor(sign === 1 ? -1 : 1);
      } else {
        if (below) this.fail("a product after a slash can be read in two ways; put it in brackets");
        else if (!product) this.fail(`"${item.text}" follows without a product sign`);
        else this.factor(sign);
      }
      product = this.product();
    }
  }

  private product(): boolean {
    const sign = this.skipProduct();
    const follower = this.next();
    const ends = !follower || follower.text === "/" || follower.text === ")";
    if (sign && ends && /[^ .\u2009]/.test(sign.text)) this.fail(`"${sign.text}" multiplies nothing`);
    return sign !== undefined;
  }

  private factor(sign: 1 | -1): void {
    const item = this.next();
    this.at += 1;
    if (item?.text === "(") {
      this.terms(sign);
      if (this.next()?.text === ")") this.at += 1;
      else this.fail("a bracket is not closed");
      return;
    }
    if (item?.type !== "word") {
      this.fail(item ? `"${item.text}" is not a unit` : "it ends too early");
      return;
    }
    const members = this.members(item.text);
    if (!members) {
      this.problem ??= unknownUnit(item.text, this.text);
      return;
    }
    const exponent = this.exponent();
    members.forEach((member, place) => {
      const own = place === members.length - 1 ? exponent : 1;
      this.factors.push({ found: member, exponent: own * sign });
    });
  }

  private members(word: string): readonly Found[] | undefined {
    const single = findAtom(word);
    if (!single) return this.squashed(word);
    this.noteHabits(word, single);
    return [single];
  }

  private noteHabits(word: string, ...found: readonly Found[]): void {
    if (found.some(({ capitals }) => capitals)) this.habits.add("capitals");
    if (word.includes("#")) this.habits.add("number sign");
  }

  private exponent(): number {
    const item = this.next();
    const [second, third] = [this.list[this.at + 1], this.list[this.at + 2]];
    if (item?.type === "digits" && /^[2-9]$/.test(item.text)) {
      this.at += 1;
      return Number.parseInt(item.text, 10);
    }
    // K-1, as some tables print K with a raised -1
    if (item?.text === "-" && second?.type === "digits" && /^[1-9]$/.test(second.text)) {
      this.at += 2;
      this.habits.add("flat exponent");
      return -Number.parseInt(second.text, 10);
    }
    if (item?.type !== "power") return 1;
    const negative = second?.text === "-";
    const digits = negative ? third : second;
    if (digits?.type !== "digits" || !/^[1-9]$/.test(digits.text)) {
      this.fail("an exponent must be one digit, 1 to 9");
      return 1;
    }
    this.at += negative ? 3 : 2;
    return Number.parseInt(digits.text, 10) * (negative ? -1 : 1);
  }

  /** Nm, kgfm, ftlbs: a force (or a mass written for one) and a length run together. */
  private squashed(word: string): readonly Found[] | undefined {
    for (let split = 1; split < word.length; split += 1) {
      const [left, right] = [findAtom(word.slice(0, split)), findAtom(word.slice(split))];
      if (!left || !right) continue;
      const lengthFirst = isLever(left) && pairs(right, left);
      if (!lengthFirst && !(isLever(right) && pairs(left, right))) continue;
      this.habits.add("squashed");
      if (lengthFirst && right.name === "kp") this.habits.add("kilopond first");
      this.noteHabits(word, left, right);
      return lengthFirst ? [right, left] : [left, right];
    }
    return undefined;
  }
}

const isLever = (found: Found): boolean => ["m", "mm", "cm", "in", "ft"].includes(found.text);

/** Inch forces go with inch levers, metric ones with metric levers. */
function pairs(force: Found, lever: Found): boolean {
  const inch = ["lbf", "lb", "ozf", "oz", "kip"].includes(force.name);
  const metric = ["N", "kgf", "gf", "kp", "kg"].includes(force.name);
  return lever.name === "m" ? metric : inch;
}
