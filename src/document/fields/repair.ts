/** One change that opening a damaged, incomplete or older file made, shown to the person who opened it. */
export interface Repair {
  /** Where in the file, such as `bike.fork.travel`; empty for the file as a whole. */
  readonly path: string;
  readonly sentence: string;
  /** What is wrong, without the place in the file and without what was done about it; left out where the sentence is all. */
  readonly problem?: string;
  /** How many changes the sentence stands for, where it sums up several. */
  readonly changes?: number;
}

/** How many changes a list of repairs stands for. */
export function countChanges(repairs: readonly Pick<Repair, 'changes'>[]): number {
  return repairs.reduce((sum, { changes }) => sum + (changes ?? 1), 0);
}
