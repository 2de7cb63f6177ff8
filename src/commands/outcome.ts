/** What a command that prints JSON leaves behind. */

/** Either stream may be empty. */
export interface Outcome {
  /** 130 where Ctrl+C ended it. */
  readonly code: 0 | 1 | 130;
  readonly out: string;
  readonly err: string;
}
