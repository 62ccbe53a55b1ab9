// The documents that the methods rest on, each worded once. `known` says how each place was met.
import { type Source, source } from "../source.ts";

const shigley9 = (at: string, known: Source["known"] = "read"): Source =>
  source({
    body: "Budynas and Nisbett",
    title: "Shigley's Mechanical Engineering Design",
    edition: "9th ed., 2011",
    at,
    known,
  });

const shigley8 = (at: string): Source =>
  source({
    body: "Budynas and Nisbett",
    title: "Shigley's Mechanical Engineering Design, solutions manual",
    edition: "8th ed., 2008",
    at,
    known: "read",
  });

export const shortTorque = source({
  body: "J. A. Speck",
  title: "Mechanical Fastening, Joining, and Assembly",
  at: "p. 85, T = K d F",
  known: "read",
});
export const powerScrew = shigley8("Probs. 8-4 and 8-6, power screw with collar");
export const torqueParts = source({
  body: "VDI",
  title: "VDI 2230 Part 1",
  at: "tightening torque split into pitch, thread and bearing",
  known: "memory",
});
export const isoProfile = source({
  body: "ISO",
  title: "ISO 68-1 and ISO 724, basic profile; root 17/12 H of ISO 898-1",
  known: "memory",
});
export const isoStressArea = source({
  body: "ISO",
  title: "ISO 898-1",
  at: "nominal stress area from the mean of pitch and root diameter",
  known: "memory",
});
export const unifiedStressArea = source({
  body: "ASME",
  title: "ASME B1.1",
  at: "tensile stress area from the pitch diameter to four places",
  known: "memory",
});
export const circle = source({ title: "area of a circle", known: "derived" });
export const combinedStress = source({
  body: "VDI",
  title: "VDI 2230 Part 1",
  at: "equivalent stress with thread torsion",
  known: "memory",
});
export const boltSprings = shigley9("Table 8-7, shank and thread as springs in series");
export const allowances = source({
  body: "VDI",
  title: "VDI 2230 Part 1",
  at: "allowances for head, engaged thread and nut",
  known: "memory",
});
export const frustum = shigley9(
  "eq. 8-20, p. 448: use and results read, the line itself from memory; reproduces 24 printed stiffnesses",
  "second-hand",
);
export const jointConstant = shigley9("p. 439, C = kb/(kb + km)");
export const serviceLoad = shigley9("p. 439, bolt load Fb = F + C P while the joint is closed");
export const proofFactors = shigley9("eqs. 8-28 to 8-30, p. 443");
export const separationNasa = source({
  body: "NASA",
  title: "NASA-STD-5020, eq. 19; with load-share credit NASA TM-106943",
  known: "second-hand",
});
export const scatterBothWays = source({
  title: "nominal preload less and more its scatter, then loss and thermal change",
  known: "derived",
});
export const boundsNasa = source({ body: "NASA", title: "NASA-STD-5020, eqs. 1 to 5", known: "memory" });
export const boundsTm = source({
  body: "NASA",
  title: "NASA TM-106943 (1995)",
  at: "(1 ± u) T/(K D), the minimum also less relaxation",
  known: "memory",
});
export const boundsVdi = source({
  body: "VDI",
  title: "VDI 2230 Part 1",
  at: "tightening factor αA",
  known: "second-hand",
});
export const windowForm = source({
  body: "NASA",
  title: "NASA-STD-5020 and NSTS 08307, maximum and minimum preload; factors are the owner's",
  known: "memory",
});
export const spread45 = source({
  title: "a washer spreads the load at about 45° until its outside diameter",
  known: "practice",
});
export const bearingAnnulus = source({ title: "force over the bearing ring", known: "derived" });
export const seriesSprings = source({
  title: "free expansion taken up by bolt and clamped parts as springs in series",
  known: "derived",
});
export const embedment = source({
  body: "VDI",
  title: "VDI 2230 Part 1",
  at: "loss of preload by embedding",
  known: "memory",
});
export const adapter = source({
  body: "US Army",
  title: "TM 1-1500-204-23-9, fig. 8-16; TM 9-254, straight and angled extension",
  known: "read",
});
export const runOn = source({
  body: "FAA",
  title: "AC 43.13-1B (1998)",
  at: "para. 7-40: running torque is added",
  known: "read",
});
export const fitExtremes = source({
  body: "ISO",
  title: "ISO 286-1",
  at: "extreme clearances of a fit",
  known: "second-hand",
});
export const reference20 = source({
  body: "NIST",
  title:
    "Uncertainties in dimensional measurements made at nonstandard temperatures, J. Res. NIST 99, 31 (1994); 20 °C of ISO 1",
  known: "read",
});
export const thickCylinder = source({
  body: "Budynas and Nisbett",
  title: "Shigley's Mechanical Engineering Design",
  edition: "8th ed.",
  at: "eqs. 3-56 to 3-59, used in the solutions",
  known: "read",
});
export const pressForceSource = source({
  title: "friction on the contact surface; no published worked example of a fitted bolt was found",
  known: "derived",
});
export const freeExpansion = source({
  title: "free thermal expansion; no published worked example was found",
  known: "derived",
});
export const hooke = source({
  title: "Hooke's law, transverse contraction of a tensioned shank",
  known: "derived",
});
export const assemblyLimit = source({
  body: "VDI",
  title: "VDI 2230 Part 1",
  at: "assembly preload at a share of yield; torsion factor 1.5 (2003 on) or 2 (1986)",
  known: "memory",
});
export const multiplierRule = source({
  title: "output torque is input times ratio times efficiency",
  known: "derived",
});
export const elongation = source({
  body: "J. A. Speck",
  title: "Mechanical Fastening, Joining, and Assembly",
  at: "p. 88, elongation F L/(A E) = F/k",
  known: "read",
});
export const nutTurn = source({
  title: "turn of the nut taken up by stretch and compression, elastic",
  known: "memory",
});
export const interactionNasa = source({
  body: "NASA",
  title: "NASA-STD-5020, ultimate interaction, preload left out",
  known: "memory",
});
export const interactionNsts = source({
  body: "NASA",
  title: "NSTS 08307, interaction of tension, bending and shear",
  known: "second-hand",
});
export const interactionEurocode = source({
  body: "CEN",
  title: "EN 1993-1-8",
  at: "Table 3.4",
  known: "second-hand",
});
export const fatigueStress = shigley9("eqs. 8-35, 8-36, p. 445");
export const fatigueCriteria = shigley9("eqs. 8-38, 8-46, 8-47, pp. 446 and 447");
export const fatigueLoadLine = source({
  ...fatigueCriteria,
  at: "eqs. 8-46, 8-47, p. 447 for a load repeated from zero; for any least load solved along its load line, own derivation",
});
export const rolledThread = source({
  body: "VDI",
  title: "VDI 2230 Part 1",
  at: "thread rolled before heat treatment, 0.85 (150/d + 45) MPa, d in mm",
  known: "memory",
});
export const strip = source({ title: "pressure on the strip that belongs to one bolt", known: "derived" });
export const edgeStatics = source({
  title: "statics of an eccentric strip with linear contact pressure; no published source was found",
  known: "derived",
});
export const soak = source({
  title: "difference of free expansion of two parts at one temperature",
  known: "derived",
});
export const pegInHole = source({
  body: "ASME",
  title: "J. Dyn. Sys. Meas. Control 104, 65 (1982), assembly of rigid parts",
  at: "the abstract alone was read",
  known: "memory",
});
export const selfLocking = source({
  title: "moment of an offset pull against friction at both ends of the dowel",
  known: "derived",
});
export const slingGeometry = source({
  title: "geometry of sling legs; lug loads by moments",
  known: "derived",
});
export const balance = source({ title: "balance of forces on the hook", known: "derived" });
export const groupShear = shigley9("eqs. 8-56 to 8-58, pp. 455-458, centroid, direct and moment part");
export const boltCircle = shigley8("Prob. 8-28, p. 217, 2 M/(R N)");
export const lineLoad = shigley8("Prob. 8-28, p. 217, moment as a line load on the circle");
export const shearAreas = shigley9("Example 8-6, pp. 453-455, shear, bearing, edge shear and net tension");
export const edgePractice = source({
  title: "edge distance of at least one and a half diameters",
  known: "practice",
});
export const shankSprings = source({
  title: "friction first, then each shank as a spring once its clearance is run through; statics",
  known: "derived",
});
export const diameterForm = source({
  title: "differences of diameters at several depths and directions",
  known: "practice",
});
export const pairEnds = source({
  title: "smallest hole less largest shank, and largest depth mean less mean shank",
  known: "derived",
});
export const quadrature = source({
  body: "JCGM",
  title: "JCGM 100 (GUM)",
  at: "independent uncertainties added as squares",
  known: "memory",
});
export const guardedRule = source({
  body: "ISO",
  title: "ISO 14253-1",
  at: "decision guarded by the uncertainty",
  known: "memory",
});
export const oversizePractice = source({
  title: "largest reading and an allowance on each side, next stocked step up",
  known: "practice",
});
export const assignmentProof = source({
  body: "H. W. Kuhn",
  title: "The Hungarian method for the assignment problem, Naval Research Logistics Quarterly 2 (1955)",
  at: "bounds that prove an assignment the cheapest",
  known: "memory",
});
export const planeFit = source({ title: "plane through the readings by least squares", known: "derived" });
export const twoCounts = source({
  title: "two counts taken separately against the drawing",
  known: "practice",
});
export const crossOrder = source({
  title: "maintenance manual of a machine maker, tightening order of a round joint",
  at: "eight bolts 1-5-3-7-2-6-4-8; other counts by the same halving, from memory",
  known: "read",
});
export const passFractions = source({
  body: "H. S. White",
  title: "Flange Bolt Torque Sequence",
  at: "30, 60 and 100 %, then 100 % until no nut moves",
  known: "read",
});
export const recordRatios = source({
  title: "ratios of unit definitions, adapter sums and pass targets",
  known: "derived",
});
export const realChange = source({
  body: "JCGM",
  title: "JCGM 100 (GUM)",
  at: "uncertainty of a difference of two independent readings",
  known: "memory",
});
export const interaction = source({
  title: "US patent 5,278,775, loads that leave an even residual; matrix form",
  at: "the abstract alone was read",
  known: "memory",
});
export const threadTolerances = source({
  title:
    "ISO 965-1:1998, tolerances of grade 6 from an open dataset (MIT licence), other grades and positions from memory; ASME B1.1, formulas from memory that reproduce printed limits",
  known: "second-hand",
});
export const nutProof = source({
  body: "ISO",
  title: "DIN EN 20898-2 (ISO 898-2:1992), proof load = stress area times proof stress, coarse thread",
  known: "second-hand",
});
export const strippingAreas = source({
  body: "US government",
  title: "FED-STD-H28/2B, shear areas of external and internal thread and the ratio for a weaker nut",
  known: "memory",
});
export const engagementLength = source({
  body: "Industrial Press",
  title: "Machinery's Handbook",
  edition: "24th ed.",
  at: "length of engagement, formula 1: thread shear area of twice the stress area",
  known: "second-hand",
});
export const exponentialFit = shigley9("eq. 8-23 and Table 8-8, p. 430");
export const gaugeResolution = source({
  body: "JCGM",
  title: "JCGM 100 (GUM)",
  at: "F.2.2.1, a step of a display as a rectangular distribution: step over the root of 12",
  known: "memory",
});
export const trialStatistics = source({
  title: "mean, standard deviation and nut factor of a trial; statistics on preload, not on the nut factor",
  known: "derived",
});
export const toleranceFactorSource = source({
  title:
    "two-sided normal tolerance factor z sqrt((n - 1)(1 + 1/n)/chi2), approximation; exact tables differ in the third figure",
  known: "memory",
});
export const clearanceOverThread = source({
  title: "hole less nominal thread diameter",
  known: "derived",
});
export const torqueTables = source({
  title:
    "printed torque tables: FAA AC 43.13-1B Table 7-1, ASME PCC-1-2013 Table 1, NAVEDTRA 14119 Table 16-4; the notes name the one read",
  known: "read",
});
export const clearanceHoleRows = source({
  title: "ISO 273:1979 and BS 4186:1967, clearance holes; the notes name the row and how it is known",
  known: "second-hand",
});
export const inchFitRows = source({
  body: "ASME",
  title: "B4.1-1967, preferred limits and fits; the notes name the row and how it is known",
  known: "second-hand",
});
