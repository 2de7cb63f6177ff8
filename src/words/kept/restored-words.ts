/** What bringing bikes back has done, in one sentence. */
import { listAll } from '../list-all.ts';

/** What was added, counted. */
export interface RestoredCounts {
  readonly bikesAdded: number;
  readonly versionsKept: number;
  readonly sheetsAdded: number;
  readonly sheetsBeside: number;
  /** Bikes that were there and say the same. */
  readonly bikesSame: number;
  readonly lessonsAdded: number;
  readonly lessonsBeside: number;
  readonly picturesAdded: number;
}

const counted = (count: number, one: string, many: string): string[] =>
  count === 0 ? [] : [count === 1 ? `one ${one}` : `${count} ${many}`];

const capital = (text: string): string => `${text[0].toUpperCase()}${text.slice(1)}`;

/** Such as "Brought back 2 bikes and 5 sheets. What was here is as it was." */
export function restoredWords(counts: RestoredCounts): string {
  const { bikesAdded, versionsKept, sheetsAdded, sheetsBeside, bikesSame, lessonsAdded, lessonsBeside } =
    counts;
  const added = [
    ...counted(bikesAdded, 'bike', 'bikes'),
    ...counted(sheetsAdded, 'sheet', 'sheets'),
    ...counted(counts.picturesAdded, 'picture', 'pictures'),
    ...counted(lessonsAdded, 'lesson', 'lessons'),
    ...counted(versionsKept, 'other version of a bike', 'other versions of bikes'),
    ...counted(sheetsBeside, 'other version of a sheet', 'other versions of sheets'),
    ...counted(lessonsBeside, 'other version of a lesson', 'other versions of lessons'),
  ];
  if (added.length === 0) return 'Everything was here already.';
  const same = counted(bikesSame, 'bike was', 'bikes were').map(
    (bikes) => ` ${capital(bikes)} here already.`,
  );
  return `Brought back ${listAll(added)}. What was here is as it was.${same.join('')}`;
}
