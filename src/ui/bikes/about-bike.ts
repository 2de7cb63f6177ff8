/** The line below a bike's name in the list: whose it is, its tags, its sheets and when it was worked on. */
import type { BikeRow } from '../../session/keeping/bikes.svelte.ts';
import { timeWords } from './time-words.ts';

export function aboutBike({ card, sheets, latestSheet, savedAt, stored, onPage }: BikeRow): string {
  const parts = [
    onPage ? 'On the page' : '',
    card.archived ? 'Archived' : '',
    card.owner,
    ...card.tags,
    sheets === 0 ? '' : `${sheets === 1 ? '1 setup sheet' : `${sheets} setup sheets`}, latest ${latestSheet}`,
    stored ? timeWords(savedAt) : 'Not saved yet',
  ];
  return parts.filter((part) => part !== '').join(' · ');
}
