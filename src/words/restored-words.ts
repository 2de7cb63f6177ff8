/** What bringing bikes back has done, in one sentence. */
import { listAll } from './list-all.ts';

/** What was added, counted. */
export interface RestoredCounts {
  readonly bikesAdded: number;
  readonly versionsKept: number;
  readonly sheetsAdded: number;
  readonly sheetsBeside: number;
}

const counted = (count: number, one: string, many: string): string[] =>
  count === 0 ? [] : [count === 1 ? `one ${one}` : `${count} ${many}`];

/** Such as "Brought back 2 bikes and 5 sheets. What was here is as it was." */
export function restoredWords(counts: RestoredCounts): string {
  const { bikesAdded, versionsKept, sheetsAdded, sheetsBeside } = counts;
  const added = [
    ...counted(bikesAdded, 'bike', 'bikes'),
    ...counted(sheetsAdded, 'sheet', 'sheets'),
    ...counted(versionsKept, 'other version of a bike', 'other versions of bikes'),
    ...counted(sheetsBeside, 'other version of a sheet', 'other versions of sheets'),
  ];
  if (added.length === 0) return 'Everything in the file was here already.';
  return `Brought back ${listAll(added)}. What was here is as it was.`;
}
