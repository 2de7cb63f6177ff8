/** What can be noted on a setup sheet: each note is one row here, and form, file, schema and table follow from the list. */

import type { QuantityKey } from '../core/units/all-quantities.ts';

export type NoteGroupKey = 'day' | 'work' | 'rider' | 'tyres' | 'clicks';

export interface NoteGroup {
  readonly key: NoteGroupKey;
  readonly label: string;
}

/** The groups in the order in which a session is logged. */
export const NOTE_GROUPS: readonly NoteGroup[] = [
  { key: 'day', label: 'Day' },
  { key: 'work', label: 'Work done' },
  { key: 'rider', label: 'What the rider says' },
  { key: 'tyres', label: 'Tyres' },
  { key: 'clicks', label: 'Clicks and turns' },
];

export interface Counted {
  readonly what: 'clicks' | 'turns';
  readonly from: string;
}

/** A sentence that says it, such as "Clicks out from fully closed." */
export function countWords({ what, from }: Counted): string {
  return `${what === 'clicks' ? 'Clicks' : 'Turns'} ${from}.`;
}

export interface Note {
  readonly key: string;
  readonly label: string;
  readonly group: NoteGroupKey;
  /** What belongs there. */
  readonly help: string;
  /** A line, several lines, or a figure that a phone's number keys type. */
  readonly entry: 'line' | 'lines' | 'figure';
  /** What its figure counts and from where, such as "clicks" and "out from fully closed"; left out where it carries a unit. */
  readonly counted?: Counted;
  /** What a figure with a unit is of; left out for words and for what is counted. */
  readonly quantity?: QuantityKey;
  /** Whether the short form for a session has it. */
  readonly quick: boolean;
}

const note = (
  group: NoteGroupKey,
  key: string,
  label: string,
  help: string,
  more: Partial<Pick<Note, 'entry' | 'counted' | 'quantity' | 'quick'>> = {},
): Note => ({ key, label, group, help, entry: 'line', quick: false, ...more });

/** A note of clicks or turns. */
const count = (key: string, label: string, counted: Counted): Note =>
  note('clicks', key, label, countWords(counted), { entry: 'figure', counted });

const OUT = { what: 'clicks', from: 'out from fully closed' } as const;
const TURNS = { what: 'turns', from: 'in from fully out' } as const;
const PRESSURE = 'With its unit, such as 2.1 bar or 30 psi.';

export const NOTES: readonly Note[] = [
  note('day', 'title', 'Name of the sheet', 'What this setup is called, such as Rain.', {}),
  note('day', 'place', 'Place', 'Where the bike was ridden.', { quick: true }),
  note('day', 'weather', 'Weather', 'Dry or wet, with temperatures of air and ground.', { quick: true }),
  note('day', 'track', 'Ground', 'Grip and state of road, track or trail.'),
  note('day', 'fuel', 'Fuel', 'How full the tank was.'),
  note('work', 'changed', 'What was changed', 'Each part with its figure before and after.', {
    entry: 'lines',
    quick: true,
  }),
  note('work', 'why', 'Why', 'What the change was meant to mend.', { entry: 'lines' }),
  note('work', 'felt', 'What was felt', 'What it did to the bike on the road or track.', {
    entry: 'lines',
    quick: true,
  }),
  note('rider', 'braking', 'Braking', 'How the bike brakes into the corner.', { entry: 'lines' }),
  note('rider', 'turnIn', 'Turn-in', 'How it goes into the lean.', { entry: 'lines' }),
  note('rider', 'midCorner', 'Mid-corner', 'How it holds its line.', { entry: 'lines' }),
  note('rider', 'openingGas', 'Opening the throttle', 'What it does as the throttle opens.', {
    entry: 'lines',
  }),
  note('rider', 'exit', 'Exit', 'How it drives out.', { entry: 'lines' }),
  note('rider', 'straight', 'On the straight', 'How steady it runs at speed.', { entry: 'lines' }),
  note('tyres', 'frontTyre', 'Front tyre', 'Make, compound and age of the tyre.'),
  note('tyres', 'frontCold', 'Front pressure, cold', PRESSURE, {
    entry: 'figure',
    quantity: 'pressure',
    quick: true,
  }),
  note('tyres', 'frontHot', 'Front pressure, hot', PRESSURE, {
    entry: 'figure',
    quantity: 'pressure',
    quick: true,
  }),
  note('tyres', 'rearTyre', 'Rear tyre', 'Make, compound and age of the tyre.'),
  note('tyres', 'rearCold', 'Rear pressure, cold', PRESSURE, {
    entry: 'figure',
    quantity: 'pressure',
    quick: true,
  }),
  note('tyres', 'rearHot', 'Rear pressure, hot', PRESSURE, {
    entry: 'figure',
    quantity: 'pressure',
    quick: true,
  }),
  count('forkRebound', 'Fork rebound', OUT),
  count('forkCompression', 'Fork compression', OUT),
  count('forkPreloadTurns', 'Fork preload', TURNS),
  count('shockRebound', 'Shock rebound', OUT),
  count('shockCompression', 'Shock compression', OUT),
  count('shockPreloadTurns', 'Shock preload', TURNS),
];

/** Every note by its key; an empty text where nothing was noted. */
export type Notes = Readonly<Record<string, string>>;

/** A further line that a workshop adds by itself. */
export interface FurtherNote {
  readonly name: string;
  readonly text: string;
}
