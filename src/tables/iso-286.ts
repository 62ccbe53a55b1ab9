// Limits and fits of ISO 286, sizes over 0 up to 500 mm: standard tolerances IT1 to IT18 and the
// deviations of holes and shafts, combined by the rules of the standard. Long because the rows are here.

import { isProblem, type Problem, problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { notInTable, once, readRows, type TableInfo } from "./table.ts";

export interface ToleranceLimits {
  /** "H7", as the letters and grade were understood. */
  readonly designation: string;
  readonly part: "hole" | "shaft";
  readonly grade: number;
  /** Range of nominal sizes the deviation was read from, over and up to and including. */
  readonly over_mm: number;
  readonly upto_mm: number;
  readonly tolerance_um: number;
  readonly upper_um: number;
  readonly lower_um: number;
}

export const iso286Sources = {
  tolerances: {
    body: "ISO",
    title: "ISO 286-1, standard tolerances",
    edition: "2010",
    at: "Table 1; all lines compared with IS 919-2:1993 and an open dataset of the DIN 286 tables (MIT licence)",
    known: "second-hand",
  },
  holes: {
    body: "ISO",
    title: "ISO 286-1, deviations of holes",
    edition: "2010",
    at: "Tables 2 and 3; compared with an open dataset (MIT licence) and a printed hole table up to 280 mm",
    known: "second-hand",
  },
  shafts: {
    body: "ISO",
    title: "ISO 286-1, deviations of shafts",
    edition: "2010",
    at: "Tables 4 and 5; compared with an open dataset (MIT licence) and a JIS B 0401:1999 shaft table up to 80 mm",
    known: "second-hand",
  },
  rules: {
    body: "ISO",
    title: "ISO 286-1, delta rule, M6 over 250 to 315 mm, use below 1 mm",
    edition: "2010",
    known: "memory",
  },
} as const satisfies Record<string, Source>;

export const iso286Table: TableInfo = {
  title: "ISO 286 tolerances and deviations to 500 mm",
  units: {
    over: "mm",
    upto: "mm",
    "IT1 to IT18": "um",
    "hole deviations A to ZC": "um",
    "shaft deviations a to zc": "um",
    "delta IT3 to IT8": "um",
  },
  sources: Object.values(iso286Sources),
  checked:
    "an open dataset of the DIN 286 tables prints G over 3 to 6 as 2 (here 4) and leaves out delta for K 30 to 40, N 24 to 30, X 3 to 6; the first print of ISO 286-2:1988 has four wrong limits, put right by Corrigendum 1:2006",
};

const toleranceText = `
over_mm,upto_mm,IT1,IT2,IT3,IT4,IT5,IT6,IT7,IT8,IT9,IT10,IT11,IT12,IT13,IT14,IT15,IT16,IT17,IT18
0,3,0.8,1.2,2,3,4,6,10,14,25,40,60,100,140,250,400,600,1000,1400
3,6,1,1.5,2.5,4,5,8,12,18,30,48,75,120,180,300,480,750,1200,1800
6,10,1,1.5,2.5,4,6,9,15,22,36,58,90,150,220,360,580,900,1500,2200
10,18,1.2,2,3,5,8,11,18,27,43,70,110,180,270,430,700,1100,1800,2700
18,30,1.5,2.5,4,6,9,13,21,33,52,84,130,210,330,520,840,1300,2100,3300
30,50,1.5,2.5,4,7,11,16,25,39,62,100,160,250,390,620,1000,1600,2500,3900
50,80,2,3,5,8,13,19,30,46,74,120,190,300,460,740,1200,1900,3000,4600
80,120,2.5,4,6,10,15,22,35,54,87,140,220,350,540,870,1400,2200,3500,5400
120,180,3.5,5,8,12,18,25,40,63,100,160,250,400,630,1000,1600,2500,4000,6300
180,250,4.5,7,10,14,20,29,46,72,115,185,290,460,720,1150,1850,2900,4600,7200
250,315,6,8,12,16,23,32,52,81,130,210,320,520,810,1300,2100,3200,5200,8100
315,400,7,9,13,18,25,36,57,89,140,230,360,570,890,1400,2300,3600,5700,8900
400,500,8,10,15,20,27,40,63,97,155,250,400,630,970,1550,2500,4000,6300,9700
`;

const holeText = `
over_mm,upto_mm,A_EI,B_EI,C_EI,D_EI,E_EI,F_EI,G_EI,H_EI,J6_ES,J7_ES,J8_ES,K_base_ES_le8,M_base_ES,N_base_ES_le8,N_ES_gt8,P_base_ES,R_base_ES,S_base_ES,T_base_ES,U_base_ES,V_base_ES,X_base_ES,Y_base_ES,Z_base_ES,ZA_base_ES,ZB_base_ES,ZC_base_ES,delta_IT3,delta_IT4,delta_IT5,delta_IT6,delta_IT7,delta_IT8
0,3,270,140,60,20,14,6,2,0,2,4,6,0,-2,-4,-4,-6,-10,-14,,-18,,-20,,-26,-32,-40,-60,0,0,0,0,0,0
3,6,270,140,70,30,20,10,4,0,5,6,10,-1,-4,-8,0,-12,-15,-19,,-23,,-28,,-35,-42,-50,-80,1,1.5,1,3,4,6
6,10,280,150,80,40,25,13,5,0,5,8,12,-1,-6,-10,0,-15,-19,-23,,-28,,-34,,-42,-52,-67,-97,1,1.5,2,3,6,7
10,14,290,150,95,50,32,16,6,0,6,10,15,-1,-7,-12,0,-18,-23,-28,,-33,,-40,,-50,-64,-90,-130,1,2,3,3,7,9
14,18,290,150,95,50,32,16,6,0,6,10,15,-1,-7,-12,0,-18,-23,-28,,-33,-39,-45,,-60,-77,-108,-150,1,2,3,3,7,9
18,24,300,160,110,65,40,20,7,0,8,12,20,-2,-8,-15,0,-22,-28,-35,,-41,-47,-54,-63,-73,-98,-136,-188,1.5,2,3,4,8,12
24,30,300,160,110,65,40,20,7,0,8,12,20,-2,-8,-15,0,-22,-28,-35,-41,-48,-55,-64,-75,-88,-118,-160,-218,1.5,2,3,4,8,12
30,40,310,170,120,80,50,25,9,0,10,14,24,-2,-9,-17,0,-26,-34,-43,-48,-60,-68,-80,-94,-112,-148,-200,-274,1.5,3,4,5,9,14
40,50,320,180,130,80,50,25,9,0,10,14,24,-2,-9,-17,0,-26,-34,-43,-54,-70,-81,-97,-114,-136,-180,-242,-325,1.5,3,4,5,9,14
50,65,340,190,140,100,60,30,10,0,13,18,28,-2,-11,-20,0,-32,-41,-53,-66,-87,-102,-122,-144,-172,-226,-300,-405,2,3,5,6,11,16
65,80,360,200,150,100,60,30,10,0,13,18,28,-2,-11,-20,0,-32,-43,-59,-75,-102,-120,-146,-174,-210,-274,-360,-480,2,3,5,6,11,16
80,100,380,220,170,120,72,36,12,0,16,22,34,-3,-13,-23,0,-37,-51,-71,-91,-124,-146,-178,-214,-258,-335,-445,-585,2,4,5,7,13,19
100,120,410,240,180,120,72,36,12,0,16,22,34,-3,-13,-23,0,-37,-54,-79,-104,-144,-172,-210,-254,-310,-400,-525,-690,2,4,5,7,13,19
120,140,460,260,200,145,85,43,14,0,18,26,41,-3,-15,-27,0,-43,-63,-92,-122,-170,-202,-248,-300,-365,-470,-620,-800,3,4,6,7,15,23
140,160,520,280,210,145,85,43,14,0,18,26,41,-3,-15,-27,0,-43,-65,-100,-134,-190,-228,-280,-340,-415,-535,-700,-900,3,4,6,7,15,23
160,180,580,310,230,145,85,43,14,0,18,26,41,-3,-15,-27,0,-43,-68,-108,-146,-210,-252,-310,-380,-465,-600,-780,-1000,3,4,6,7,15,23
180,200,660,340,240,170,100,50,15,0,22,30,47,-4,-17,-31,0,-50,-77,-122,-166,-236,-284,-350,-425,-520,-670,-880,-1150,3,4,6,9,17,26
200,225,740,380,260,170,100,50,15,0,22,30,47,-4,-17,-31,0,-50,-80,-130,-180,-258,-310,-385,-470,-575,-740,-960,-1250,3,4,6,9,17,26
225,250,820,420,280,170,100,50,15,0,22,30,47,-4,-17,-31,0,-50,-84,-140,-196,-284,-340,-425,-520,-640,-820,-1050,-1350,3,4,6,9,17,26
250,280,920,480,300,190,110,56,17,0,25,36,55,-4,-20,-34,0,-56,-94,-158,-218,-315,-385,-475,-580,-710,-920,-1200,-1550,4,4,7,9,20,29
280,315,1050,540,330,190,110,56,17,0,25,36,55,-4,-20,-34,0,-56,-98,-170,-240,-350,-425,-525,-650,-790,-1000,-1300,-1700,4,4,7,9,20,29
315,355,1200,600,360,210,125,62,18,0,29,39,60,-4,-21,-37,0,-62,-108,-190,-268,-390,-475,-590,-730,-900,-1150,-1500,-1900,4,5,7,11,21,32
355,400,1350,680,400,210,125,62,18,0,29,39,60,-4,-21,-37,0,-62,-114,-208,-294,-435,-530,-660,-820,-1000,-1300,-1650,-2100,4,5,7,11,21,32
400,450,1500,760,440,230,135,68,20,0,33,43,66,-5,-23,-40,0,-68,-126,-232,-330,-490,-595,-740,-920,-1100,-1450,-1850,-2400,5,5,7,13,23,34
450,500,1650,840,480,230,135,68,20,0,33,43,66,-5,-23,-40,0,-68,-132,-252,-360,-540,-660,-820,-1000,-1250,-1600,-2100,-2600,5,5,7,13,23,34
`;

const shaftText = `
over_mm,upto_mm,a_es,b_es,c_es,d_es,e_es,f_es,g_es,h_es,j5_j6_ei,j7_ei,k_4to7_ei,k_other_ei,m_ei,n_ei,p_ei,r_ei,s_ei,t_ei,u_ei,v_ei,x_ei,y_ei,z_ei,za_ei,zb_ei,zc_ei
0,3,-270,-140,-60,-20,-14,-6,-2,0,-2,-4,0,0,2,4,6,10,14,,18,,20,,26,32,40,60
3,6,-270,-140,-70,-30,-20,-10,-4,0,-2,-4,1,0,4,8,12,15,19,,23,,28,,35,42,50,80
6,10,-280,-150,-80,-40,-25,-13,-5,0,-2,-5,1,0,6,10,15,19,23,,28,,34,,42,52,67,97
10,14,-290,-150,-95,-50,-32,-16,-6,0,-3,-6,1,0,7,12,18,23,28,,33,,40,,50,64,90,130
14,18,-290,-150,-95,-50,-32,-16,-6,0,-3,-6,1,0,7,12,18,23,28,,33,39,45,,60,77,108,150
18,24,-300,-160,-110,-65,-40,-20,-7,0,-4,-8,2,0,8,15,22,28,35,,41,47,54,63,73,98,136,188
24,30,-300,-160,-110,-65,-40,-20,-7,0,-4,-8,2,0,8,15,22,28,35,41,48,55,64,75,88,118,160,218
30,40,-310,-170,-120,-80,-50,-25,-9,0,-5,-10,2,0,9,17,26,34,43,48,60,68,80,94,112,148,200,274
40,50,-320,-180,-130,-80,-50,-25,-9,0,-5,-10,2,0,9,17,26,34,43,54,70,81,97,114,136,180,242,325
50,65,-340,-190,-140,-100,-60,-30,-10,0,-7,-12,2,0,11,20,32,41,53,66,87,102,122,144,172,226,300,405
65,80,-360,-200,-150,-100,-60,-30,-10,0,-7,-12,2,0,11,20,32,43,59,75,102,120,146,174,210,274,360,480
80,100,-380,-220,-170,-120,-72,-36,-12,0,-9,-15,3,0,13,23,37,51,71,91,124,146,178,214,258,335,445,585
100,120,-410,-240,-180,-120,-72,-36,-12,0,-9,-15,3,0,13,23,37,54,79,104,144,172,210,254,310,400,525,690
120,140,-460,-260,-200,-145,-85,-43,-14,0,-11,-18,3,0,15,27,43,63,92,122,170,202,248,300,365,470,620,800
140,160,-520,-280,-210,-145,-85,-43,-14,0,-11,-18,3,0,15,27,43,65,100,134,190,228,280,340,415,535,700,900
160,180,-580,-310,-230,-145,-85,-43,-14,0,-11,-18,3,0,15,27,43,68,108,146,210,252,310,380,465,600,780,1000
180,200,-660,-340,-240,-170,-100,-50,-15,0,-13,-21,4,0,17,31,50,77,122,166,236,284,350,425,520,670,880,1150
200,225,-740,-380,-260,-170,-100,-50,-15,0,-13,-21,4,0,17,31,50,80,130,180,258,310,385,470,575,740,960,1250
225,250,-820,-420,-280,-170,-100,-50,-15,0,-13,-21,4,0,17,31,50,84,140,196,284,340,425,520,640,820,1050,1350
250,280,-920,-480,-300,-190,-110,-56,-17,0,-16,-26,4,0,20,34,56,94,158,218,315,385,475,580,710,920,1200,1550
280,315,-1050,-540,-330,-190,-110,-56,-17,0,-16,-26,4,0,20,34,56,98,170,240,350,425,525,650,790,1000,1300,1700
315,355,-1200,-600,-360,-210,-125,-62,-18,0,-18,-28,4,0,21,37,62,108,190,268,390,475,590,730,900,1150,1500,1900
355,400,-1350,-680,-400,-210,-125,-62,-18,0,-18,-28,4,0,21,37,62,114,208,294,435,530,660,820,1000,1300,1650,2100
400,450,-1500,-760,-440,-230,-135,-68,-20,0,-20,-32,5,0,23,40,68,126,232,330,490,595,740,920,1100,1450,1850,2400
450,500,-1650,-840,-480,-230,-135,-68,-20,0,-20,-32,5,0,23,40,68,132,252,360,540,660,820,1000,1250,1600,2100,2600
`;

export interface SizeRange {
  readonly over: number;
  readonly upto: number;
  readonly line: (column: string) => number | undefined;
}

const ranges = (text: string) =>
  once(() =>
    readRows(
      text,
      (line): SizeRange => ({
        over: line.number("over_mm"),
        upto: line.number("upto_mm"),
        line: line.optional,
      }),
    ),
  );
/** The three tables as printed, before the rules of the standard join them. */
export const iso286Ranges = {
  tolerances: ranges(toleranceText),
  holes: ranges(holeText),
  shafts: ranges(shaftText),
} as const;

// A size that arrives as 50.000 000 000 1 mm from a conversion belongs to the range up to 50.
const tidy = (size_mm: number): number => Math.round(size_mm * 1e6) / 1e6;

function rangeOf(rows: readonly SizeRange[], size_mm: number): SizeRange | Problem {
  const size = tidy(size_mm);
  const found = rows.find((row) => size > row.over && size <= row.upto);
  if (found) return found;
  return problem({
    code: "size-outside-table",
    what: "nominal size",
    got: `${size} mm`,
    must: "be over 0 up to 500 mm",
    why: "the tables of ISO 286 carried here end there",
  });
}

/** Standard tolerance IT1 to IT18, in micrometres. */
export function standardTolerance(size_mm: number, grade: number): number | Problem {
  const range = rangeOf(iso286Ranges.tolerances(), size_mm);
  if (isProblem(range)) return range;
  const tolerance = gradeCell(range, grade);
  if (tolerance === undefined) {
    return problem({
      code: "unknown-grade",
      what: "tolerance grade",
      got: `IT${grade}`,
      must: "be IT1 to IT18",
      why: "IT01 and IT0 are not carried",
    });
  }
  if (grade >= 14 && tidy(size_mm) <= 1) {
    return problem({
      code: "grade-not-used",
      what: "tolerance grade",
      got: `IT${grade} at ${tidy(size_mm)} mm`,
      must: "be IT13 or finer",
      why: "ISO 286 does not use IT14 to IT18 up to 1 mm",
    });
  }
  return tolerance;
}

const gradeCell = (range: SizeRange, grade: number): number | undefined =>
  Number.isInteger(grade) && grade >= 1 && grade <= 18 ? range.line(`IT${grade}`) : undefined;

const holeLetters = "A B C D E F G H J JS K M N P R S T U V X Y Z ZA ZB ZC".split(" ");
const shaftLetters = holeLetters.map((letter) => letter.toLowerCase());

/** Upper and lower deviation in micrometres: toleranceLimits(25, "H7"), toleranceLimits(25, "k6"). Capitals are holes. */
export function toleranceLimits(size_mm: number, designation: string): ToleranceLimits | Problem {
  const parts = /^([A-Za-z]{1,2})(\d{1,2})$/.exec(designation.replace(/\s+/g, ""));
  const [, letter = "", digits = ""] = parts ?? [];
  const part = holeLetters.includes(letter) ? "hole" : shaftLetters.includes(letter) ? "shaft" : undefined;
  if (part === undefined) return unknownLetter(designation, letter, digits);
  // "H01" is grade IT01, not IT1.
  const grade = digits.startsWith("0") ? Number.NaN : Number(digits);
  const tolerance = standardTolerance(size_mm, grade);
  if (isProblem(tolerance)) return tolerance;
  const range = rangeOf(part === "hole" ? iso286Ranges.holes() : iso286Ranges.shafts(), size_mm);
  if (isProblem(range)) return range;
  const limits =
    part === "hole"
      ? holeDeviations(range, letter, grade, tolerance, tidy(size_mm))
      : shaftDeviations(range, letter, grade, tolerance, tidy(size_mm));
  if (isProblem(limits)) return limits;
  return {
    designation: `${letter}${grade}`,
    part,
    grade,
    over_mm: range.over,
    upto_mm: range.upto,
    tolerance_um: tolerance,
    ...limits,
  };
}

interface Deviations {
  readonly upper_um: number;
  readonly lower_um: number;
}

const below = (upper_um: number, tolerance: number): Deviations => ({
  upper_um: upper_um + 0,
  lower_um: upper_um - tolerance,
});
const above = (lower_um: number, tolerance: number): Deviations => ({
  upper_um: lower_um + tolerance,
  lower_um: lower_um + 0,
});
const around = (tolerance: number): Deviations => ({
  upper_um: tolerance / 2,
  lower_um: -tolerance / 2,
});

function shaftDeviations(
  range: SizeRange,
  letter: string,
  grade: number,
  tolerance: number,
  size: number,
): Deviations | Problem {
  if (letter === "js") return around(tolerance);
  if ((letter === "a" || letter === "b") && size <= 1)
    return notDefined(letter, grade, size, "a and b are not used up to 1 mm");
  if (letter <= "h")
    return answer(
      range.line(`${letter}_es`),
      (deviation) => below(deviation, tolerance),
      letter,
      grade,
      size,
    );
  if (letter === "j") {
    const column = grade === 5 || grade === 6 ? "j5_j6_ei" : grade === 7 ? "j7_ei" : "";
    if (column === "") return notDefined(letter, grade, size, "j is tabulated for grades 5, 6 and 7");
    return answer(range.line(column), (deviation) => above(deviation, tolerance), letter, grade, size);
  }
  const column = letter === "k" ? (grade >= 4 && grade <= 7 ? "k_4to7_ei" : "k_other_ei") : `${letter}_ei`;
  return answer(range.line(column), (deviation) => above(deviation, tolerance), letter, grade, size);
}

function holeDeviations(
  range: SizeRange,
  letter: string,
  grade: number,
  tolerance: number,
  size: number,
): Deviations | Problem {
  if (letter === "JS") return around(tolerance);
  if ((letter === "A" || letter === "B") && size <= 1)
    return notDefined(letter, grade, size, "A and B are not used up to 1 mm");
  if (letter <= "H")
    return answer(
      range.line(`${letter}_EI`),
      (deviation) => above(deviation, tolerance),
      letter,
      grade,
      size,
    );
  if (letter === "J") {
    if (grade < 6 || grade > 8)
      return notDefined(letter, grade, size, "J is tabulated for grades 6, 7 and 8");
    return answer(
      range.line(`J${grade}_ES`),
      (deviation) => below(deviation, tolerance),
      letter,
      grade,
      size,
    );
  }
  if (letter === "K" && grade > 8 && size > 3)
    return notDefined(letter, grade, size, "K coarser than IT8 is used up to 3 mm only");
  if (letter === "N" && grade > 8 && size <= 1)
    return notDefined(letter, grade, size, "N coarser than IT8 is not used up to 1 mm");
  return answer(
    upperOfHole(range, letter, grade),
    (deviation) => below(deviation, tolerance),
    letter,
    grade,
    size,
  );
}

// The delta rule: K, M, N to IT8 and P to ZC to IT7 lie higher by IT(n) - IT(n - 1), so that
// P7/h6 is the same fit as H7/p6. Coarser grades take the tabulated value as it stands.
function upperOfHole(range: SizeRange, letter: string, grade: number): number | undefined {
  if (letter === "M" && grade === 6 && range.over >= 250 && range.upto <= 315) return -9;
  if (letter === "N" && grade > 8) return range.line("N_ES_gt8");
  const column = letter === "K" || letter === "N" ? `${letter}_base_ES_le8` : `${letter}_base_ES`;
  const base = range.line(column);
  const finest = "KMN".includes(letter) ? 8 : 7;
  const delta = grade >= 3 && grade <= finest ? (range.line(`delta_IT${grade}`) ?? 0) : 0;
  return base === undefined ? undefined : base + delta;
}

function answer(
  deviation: number | undefined,
  limits: (deviation: number) => Deviations,
  letter: string,
  grade: number,
  size: number,
): Deviations | Problem {
  return deviation === undefined
    ? notDefined(letter, grade, size, `ISO 286 gives no ${letter} at this size`)
    : limits(deviation);
}

const notDefined = (letter: string, grade: number, size: number, why: string): Problem =>
  problem({
    code: "class-not-defined",
    what: "tolerance class",
    got: `${letter}${grade} at ${size} mm`,
    must: "be a class ISO 286 defines at that size",
    why,
  });

function unknownLetter(designation: string, letter: string, digits: string): Problem {
  const hole = letter.toUpperCase();
  const known = holeLetters.includes(hole);
  return notInTable({
    code: "unknown-tolerance-class",
    what: "tolerance class",
    got: designation.trim() || "nothing",
    choices: known ? [`${hole}${digits}`, `${hole.toLowerCase()}${digits}`] : ["H7", "k6"],
    why: known
      ? "both letters are capitals for a hole and small for a shaft"
      : "a class is one letter pair of ISO 286 and a grade; cd, ef and fg are not carried",
  });
}
