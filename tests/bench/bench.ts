// What a bench file gives: cases that answer the same, timed in alternating rounds against a reference.

/** A value, or a promise of one. */
type Result = unknown;

export interface Bench {
  /** "spread · 12 lines, 15 inputs, 1e6 samples" */
  readonly title: string;
  /** The case all others are held against, or for each case its own. */
  readonly reference: string | Readonly<Record<string, string>>;
  /** Largest ratio promised; a case without a bar is only reported. */
  readonly bars: Readonly<Record<string, number>>;
  readonly cases: Readonly<Record<string, () => Result>>;
  /** Relative difference up to which two answers are the same; 1e-12 when left out. */
  readonly tolerance?: number;
  /** Absolute times beside the ratios: how often a case repeats its work in one call, and the bar in ms for one. */
  readonly times?: Readonly<Record<string, { readonly repeats: number; readonly ms?: number }>>;
  /** Rounds that are timed; 9 when left out. */
  readonly rounds?: number;
  /** Put right before any round, and taken down after the last. */
  readonly before?: () => void | Promise<void>;
  readonly after?: () => void | Promise<void>;
}
