// Digits and minus raised, as powers are written by hand.
const raisedDigits: Readonly<Record<string, string>> = {
  "-": "⁻",
  "−": "⁻",
  "0": "⁰",
  "1": "¹",
  "2": "²",
  "3": "³",
  "4": "⁴",
  "5": "⁵",
  "6": "⁶",
  "7": "⁷",
  "8": "⁸",
  "9": "⁹",
};

/** "-12" → "⁻¹²"; every other sign stays as it is. */
export const raised = (text: string): string => text.replace(/./gu, (sign) => raisedDigits[sign] ?? sign);
