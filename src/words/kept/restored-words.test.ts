/** Tests of what bringing bikes back says. */
import { expect, it } from 'vitest';
import { restoredWords } from './restored-words.ts';

const none = {
  ...{ bikesAdded: 0, versionsKept: 0, sheetsAdded: 0, sheetsBeside: 0, bikesSame: 0 },
  ...{ lessonsAdded: 0, lessonsBeside: 0, picturesAdded: 0 },
};

it('names what was added, and says so when nothing was', () => {
  expect(restoredWords(none)).toBe('Everything was here already.');
  expect(restoredWords({ ...none, bikesAdded: 1 })).toBe(
    'Brought back one bike. What was here is as it was.',
  );
  expect(
    restoredWords({
      ...{ bikesAdded: 2, sheetsAdded: 5, versionsKept: 1, sheetsBeside: 3, bikesSame: 1 },
      ...{ lessonsAdded: 4, lessonsBeside: 1, picturesAdded: 2 },
    }),
  ).toBe(
    'Brought back 2 bikes, 5 sheets, 2 pictures, 4 lessons, one other version of a bike, 3 other versions of sheets and one other version of a lesson. What was here is as it was. One bike was here already.',
  );
});
