/** What a command that prints JSON leaves behind. */

/** Either stream may be empty. */
export interface Outcome {
  readonly code: 0 | 1;
  readonly out: string;
  readonly err: string;
}
