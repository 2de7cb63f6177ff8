/** The complaints, in the order of a corner; every line is common practice, no source. */
import type { Complaint, Place } from './complaint.ts';

export const PLACES: readonly { readonly key: Place; readonly label: string }[] = [
  { key: 'braking', label: 'Braking' },
  { key: 'turnIn', label: 'Turning in' },
  { key: 'midCorner', label: 'Mid-corner' },
  { key: 'gas', label: 'Opening the throttle' },
  { key: 'straight', label: 'On the straight' },
];

/**
 * Why a complaint of each place begins at its end: the split at opening the throttle, a rule of feel. On the straight the
 * end that shows it comes first.
 */
export const WHY_END_OF_PLACE: Readonly<Record<Place, string>> = {
  braking: 'Until the throttle opens, the front is adjusted first.',
  turnIn: 'Until the throttle opens, the front is adjusted first.',
  midCorner: 'Until the throttle opens, the front is adjusted first.',
  gas: 'From opening the throttle on, the rear is adjusted first.',
  straight: 'On the straight the end that shows it is adjusted first.',
};

/** The mark of every line that is known from workshops alone. */
export const PRACTICE = 'common practice, no source';

/** The line of a setup sheet on which a complaint of each place belongs, by its key. */
export const NOTE_OF_PLACE: Readonly<Record<Place, string>> = {
  braking: 'braking',
  turnIn: 'turnIn',
  midCorner: 'midCorner',
  gas: 'openingGas',
  straight: 'straight',
};

export const COMPLAINTS: readonly Complaint[] = [
  {
    key: 'divesFar',
    place: 'braking',
    says: 'The nose dives far, and the fork comes near its end.',
    end: 'front',
    reading: 'frontTravelLeft',
    state: 'braking',
    better: 'more',
    ruleOut: 'fork oil level, damping, sag at both ends, tyre pressures',
    tries: [
      { adjuster: 'forkPreload', steps: 3 },
      { adjuster: 'forkSpringRate', steps: 1 },
      { adjuster: 'forkAirGap', steps: -2 },
    ],
  },
  {
    key: 'rearLifts',
    place: 'braking',
    says: 'The rear comes off the ground or swings out.',
    end: 'front',
    reading: 'rearWheelLoad',
    state: 'braking',
    better: 'more',
    ruleOut: 'engine braking and clutch, rear tyre, rebound damping at the rear',
    tries: [
      { adjuster: 'forkTubes', steps: -2 },
      { adjuster: 'forkPreload', steps: 3 },
      { adjuster: 'shockLength', steps: -2 },
    ],
  },
  {
    key: 'turnsSlowly',
    place: 'turnIn',
    says: 'It turns in slowly and wants a hard push.',
    end: 'front',
    reading: 'trail',
    state: 'braking',
    better: 'less',
    ruleOut: 'front tyre’s pressure and shape, steering-head bearings, rider sag at both ends',
    tries: [
      { adjuster: 'forkTubes', steps: 2 },
      { adjuster: 'shockLength', steps: 2 },
      { adjuster: 'clampOffset', steps: 2 },
    ],
  },
  {
    key: 'fallsIn',
    place: 'turnIn',
    says: 'It falls into the corner and feels nervous.',
    end: 'front',
    reading: 'trail',
    state: 'braking',
    better: 'more',
    ruleOut: 'front tyre worn to an edge, its pressure, steering-head bearings',
    tries: [
      { adjuster: 'forkTubes', steps: -2 },
      { adjuster: 'shockLength', steps: -2 },
      { adjuster: 'clampOffset', steps: -2 },
    ],
  },
  {
    key: 'wideMidCorner',
    place: 'midCorner',
    says: 'It runs wide with the throttle steady.',
    end: 'front',
    reading: 'rake',
    state: 'midCorner',
    better: 'less',
    ruleOut: 'tyres and pressures, rebound damping at the front, rider sag at both ends',
    tries: [
      { adjuster: 'forkTubes', steps: 2 },
      { adjuster: 'forkPreload', steps: -3 },
      { adjuster: 'shockLength', steps: 2 },
    ],
  },
  {
    key: 'squatsAndRunsWide',
    place: 'gas',
    says: 'It squats when the throttle opens, and runs wide.',
    end: 'rear',
    reading: 'antiSquat',
    state: 'accelerating',
    better: 'more',
    ruleOut: 'rear sag, compression damping at the rear, chain slack, rear tyre',
    tries: [
      { adjuster: 'shockLength', steps: 2 },
      { adjuster: 'shockPreload', steps: 3 },
      { adjuster: 'pivotUp', steps: 1 },
      { adjuster: 'rearTeeth', steps: 1 },
    ],
  },
  {
    key: 'spinsUp',
    place: 'gas',
    says: 'The rear spins up early, as if nothing pressed the tyre down.',
    end: 'rear',
    reading: 'antiSquat',
    state: 'accelerating',
    better: 'less',
    ruleOut: 'rear tyre and its pressure, rebound damping at the rear, chain slack',
    tries: [
      { adjuster: 'shockLength', steps: -2 },
      { adjuster: 'shockPreload', steps: -3 },
      { adjuster: 'pivotUp', steps: -1 },
      { adjuster: 'rearTeeth', steps: -1 },
    ],
  },
  {
    key: 'frontLight',
    place: 'gas',
    says: 'The front goes light and drifts wide out of the corner.',
    end: 'rear',
    reading: 'frontWheelLoad',
    state: 'accelerating',
    better: 'more',
    ruleOut: 'rear sag, the rider’s place on the seat, rebound damping at the front',
    tries: [
      { adjuster: 'shockLength', steps: 2 },
      { adjuster: 'axlePosition', steps: 3 },
      { adjuster: 'forkTubes', steps: 2 },
    ],
  },
  {
    key: 'shakesHead',
    place: 'straight',
    says: 'It shakes its head at speed.',
    end: 'front',
    reading: 'trail',
    state: 'riderUp',
    better: 'more',
    ruleOut:
      'wheel balance, tyres, bearings of wheels, steering head and swingarm, luggage, steering damper. Do not ride it fast until this is found',
    tries: [
      { adjuster: 'forkTubes', steps: -2 },
      { adjuster: 'shockLength', steps: -2 },
      { adjuster: 'clampOffset', steps: -2 },
    ],
  },
  {
    key: 'sitsLow',
    place: 'straight',
    says: 'It sits low at the rear with the rider on it.',
    end: 'rear',
    reading: 'rearTravel',
    state: 'riderUp',
    better: 'less',
    ruleOut: 'free sag, luggage, a shock that leaks or has lost its nitrogen',
    tries: [
      { adjuster: 'shockPreload', steps: 3 },
      { adjuster: 'shockSpringRate', steps: 1 },
    ],
  },
];
