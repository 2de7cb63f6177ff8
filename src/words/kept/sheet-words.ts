/** What a setup sheet is called, and what it says in a line. */

/** What is needed of a sheet to name it. */
export interface NamedSheet {
  readonly day: string;
  readonly notes: Readonly<Record<string, string>>;
}

const LONGEST_LINE = 90;

const DAY = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
});

/** A day such as 2026-11-26 as a person reads it: 26 Nov 2026. */
export function dayWords(day: string): string {
  return DAY.format(new Date(`${day}T00:00:00Z`));
}

const MOMENT = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  hour: '2-digit',
  minute: '2-digit',
});

/** A moment, ms since 1970, as a person reads it where they are. */
export function momentWords(ms: number): string {
  return MOMENT.format(ms);
}

/** The day that a clock on the wall shows, as 2026-11-26. */
export function today(now: Date): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** The same of a moment, ms since 1970. */
export function dayAt(ms: number): string {
  return today(new Date(ms));
}

/** Its name with its day, or its place with its day where nobody named it. */
export function sheetName({ day, notes }: NamedSheet): string {
  const name = notes.title ?? notes.place ?? '';
  return name === '' ? `sheet of ${dayWords(day)}` : `${name}, ${dayWords(day)}`;
}

/** What was changed or felt, in one line; empty where neither was noted. */
export function sheetLine({ notes }: NamedSheet): string {
  const said = [notes.changed ?? '', notes.felt ?? ''].filter((text) => text !== '').join('. ');
  const line = said.replace(/\s+/gu, ' ');
  const letters = [...line];
  return letters.length > LONGEST_LINE ? `${letters.slice(0, LONGEST_LINE).join('')}…` : line;
}

/**
 * What a sheet says beside a figure of its day: place and conditions, what was changed and felt, and the rider's own words,
 * which `rider` names.
 */
export function seasonLine(
  { day, notes }: NamedSheet,
  rider: readonly { readonly key: string; readonly label: string }[],
): string {
  const conditions = [dayWords(day), notes.place, notes.weather, notes.track].filter((text) => text);
  const words = rider.flatMap(({ key, label }) => (notes[key] ? [`${label}: ${notes[key]}`] : []));
  const said = [notes.changed, notes.felt, ...words].filter((text) => text);
  const line = [conditions.join(', '), said.join('. ')].filter((text) => text !== '').join(': ');
  return line.replace(/\s+/gu, ' ');
}
