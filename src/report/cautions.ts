// The standing cautions, worded once. A page shows them in full, by code.
import type { CautionCode } from "../document/item.ts";

export interface Caution {
  readonly title: string;
  readonly text: string;
}

const first = "The maker's instructions and local rules come first.";

export const cautions: Readonly<Record<CautionCode, Caution>> = {
  C1: {
    title: "Isolate before anything is slackened",
    text: `Isolate, lock and tag; drain and vent; then prove that no pressure, heat or movement is left. How it is done and who signs for it is for local rules to say. ${first}`,
  },
  C2: {
    title: "Lifting",
    text: `A lift is planned and done by competent people with marked and inspected gear. Nobody stands under the load or reaches between the halves. Local lifting law governs. ${first}`,
  },
  C3: {
    title: "A stuck part stores energy",
    text: `Stand clear of the line of the bolt, the puller and the wrench, and bring the load up slowly. What lets go, lets go all at once. ${first}`,
  },
  C4: {
    title: "Heating",
    text: `Get the fire permit. No flame near solvents, penetrant, trapped fluid or coatings. Some materials must not be heated at all; know which before the torch is lit. ${first}`,
  },
  C5: {
    title: "Very cold media",
    text: `They burn the skin, and in pits and small rooms the gas takes the place of air that can be breathed. Gloves, face shield, ventilation, and somebody outside. ${first}`,
  },
  C6: {
    title: "Hydraulics under pressure",
    text: `A hose whips, a pinhole injects oil through the skin, an unrated part bursts. Use rated parts only, look before each stroke, and keep hands off a line under pressure. ${first}`,
  },
  C7: {
    title: "Keep the machine clean inside",
    text: `Abrasives, chips and compound stay out of it. Blank off the openings, and count tools and parts in and out. ${first}`,
  },
  C8: {
    title: "What these sums are for",
    text: "They help a competent person to think, and they cover only what the page says. The maker's instructions, the code that applies, and a licensed engineer where the law asks for one, come first.",
  },
};
