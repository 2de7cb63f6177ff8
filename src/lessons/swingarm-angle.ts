/** The lesson “The swingarm’s angle”. */
import type { Lesson } from './lesson.ts';

export const swingarmAngle: Lesson = {
  key: 'swingarmAngle',
  title: 'The swingarm’s angle',
  goal: 'Say why tenths of a degree of swingarm angle are felt on the gas.',
  minutes: 10,
  caution:
    'Work on a stand that cannot slip, with a second person holding the bike. Check chain slack and side stand afterwards, by the maker’s manual.',
  prepare: [],
  shows: ['swingarmAngle', 'antiSquat', 'antiSquatSwingarm', 'antiSquatChain'],
  steps: [
    {
      act: 'Make the arm steeper with a longer shock.',
      turns: [{ adjuster: 'shockLength', by: 3 }],
      state: 'riderUp',
      figure: 'antiSquatSwingarm',
      point: 'more',
      because: 'The tyre pushes the arm forward, and a steeper arm turns more of that push into lift.',
      otherwise: 'The wheelbase or the centre’s height changed more than the arm.',
    },
    {
      act: 'The same shock. Now the chain’s part alone.',
      turns: [{ adjuster: 'shockLength', by: 3 }],
      state: 'riderUp',
      figure: 'antiSquatChain',
      point: 'more',
      because:
        'The pivot comes nearer to the upper run as the arm gets steeper. The pull has a shorter lever and draws the rear down by less.',
      otherwise:
        'The lever of the pull did not get shorter on this bike: look where its upper run passes the pivot.',
    },
    {
      act: 'Both together.',
      turns: [{ adjuster: 'shockLength', by: 3 }],
      state: 'riderUp',
      figure: 'antiSquat',
      point: 'more',
      because: 'Add both parts: this is the sum.',
      otherwise: 'Add both parts: this is the sum.',
    },
  ],
  check: {
    act: 'You make the arm flatter with a shorter shock',
    turns: [{ adjuster: 'shockLength', by: -3 }],
    state: 'riderUp',
    figure: 'antiSquat',
  },
  notes: [
    'Swingarm angles are quoted with the wheel hanging. Ask which angle somebody means.',
    'At which angle a tyre spins depends on grip and rider. The model does not know.',
  ],
};
