// What the limits of a thread are put together from; metric and unified threads give the same parts.

/** Basic diameters and the deviations from them, in metres; a limit that is not defined is absent. */
export interface ThreadLimits {
  readonly basicMajor: number;
  readonly basicPitch: number;
  readonly basicMinor?: number;
  /** Fundamental deviation es or EI: negative takes the thread away from basic size. */
  readonly deviation: number;
  readonly majorUpper?: number;
  readonly majorLower: number;
  readonly pitchUpper: number;
  readonly pitchLower: number;
  readonly minorUpper?: number;
  readonly minorLower?: number;
  /** 1 where a figure was worked by a factor or formula and is not tabulated; metric threads only. */
  readonly pitchGradeWorked?: number;
  readonly crestGradeWorked?: number;
  readonly positionWorked?: number;
  readonly remarks: readonly string[];
}
