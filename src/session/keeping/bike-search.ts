/** The list of bikes as it is asked for: which bikes hold the words searched for, and in which order they stand. */
import type { ListedBike } from '../../storage/bike-store.ts';

export const BIKE_ORDERS = [
  { key: 'lastWorkedOn', label: 'Last worked on' },
  { key: 'name', label: 'Name' },
  { key: 'owner', label: 'Owner' },
  { key: 'latestSheet', label: 'Latest setup sheet' },
] as const;

export type BikeOrder = (typeof BIKE_ORDERS)[number]['key'];

/** A bike with all its words in one text, made once and not at each letter typed. */
interface SearchedBike<Bike extends ListedBike> {
  readonly bike: Bike;
  readonly words: string;
}

/** Letters without their case and accents, so that a name is found however it is typed. */
function folded(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
}

const inAlphabet = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** Text that is missing comes last. */
function byText(a: string, b: string): number {
  if (a === '' || b === '') return Number(a === '') - Number(b === '');
  return inAlphabet.compare(a, b);
}

/** The latest day comes first, a bike without a setup sheet last. */
function byDay(a: string | null, b: string | null): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return a === b ? 0 : a < b ? 1 : -1;
}

const COMPARE: Readonly<Record<BikeOrder, (a: ListedBike, b: ListedBike) => number>> = {
  lastWorkedOn: (a, b) => b.savedAt - a.savedAt,
  name: (a, b) => byText(a.name, b.name) || b.savedAt - a.savedAt,
  owner: (a, b) => byText(a.card.owner, b.card.owner) || byText(a.name, b.name),
  latestSheet: (a, b) => byDay(a.latestSheet, b.latestSheet) || b.savedAt - a.savedAt,
};

/** The bikes in order, each with its words. Archived bikes are left out unless they are asked for. */
export function bikesInOrder<Bike extends ListedBike>(
  bikes: readonly Bike[],
  order: BikeOrder,
  withArchived: boolean,
): readonly SearchedBike<Bike>[] {
  return bikes
    .filter(({ card }) => withArchived || !card.archived)
    .sort(COMPARE[order])
    .map((bike) => {
      const { owner, tags, notes } = bike.card;
      return { bike, words: folded([bike.name, owner, ...tags, notes].join('\n')) };
    });
}

/** The bikes that hold every word of `search`, in any part of name, owner, tags or notes. */
export function bikesWith<Bike extends ListedBike>(
  bikes: readonly SearchedBike<Bike>[],
  search: string,
): readonly Bike[] {
  const wanted = folded(search).split(/\s+/u).filter(Boolean);
  return bikes.flatMap(({ bike, words }) => (wanted.every((word) => words.includes(word)) ? [bike] : []));
}
