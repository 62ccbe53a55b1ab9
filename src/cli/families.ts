// Which family a method belongs to: the folder it stands in under src/methods. A test keeps the two alike.
export const families: Readonly<Record<string, readonly string[]>> = {
  threads: ["metric-thread", "unified-thread", "bolt-strength"],
  torque: [
    "preload-from-torque",
    "torque-from-preload",
    "torque-from-friction",
    "preload-from-friction",
    "assembly-stress",
    "set-torque",
    "wrench-setting",
  ],
  stiffness: ["bolt-stiffness", "clamped-stiffness-cone", "load-share"],
  preload: ["preload-bounds", "preload-window", "embedding-loss", "thermal-preload-change"],
  margins: ["service-bolt-load", "separation-margin", "proof-factors", "bearing-pressure"],
  fits: ["fit-limits-iso", "size-at-reference", "press-fit", "fit-temperature", "shank-contraction"],
};

export const familyOf = (id: string): string =>
  Object.keys(families).find((family) => families[family]?.includes(id)) ?? "other";
