/** What a bike's file is called. */

const ENDING = '.sidestance.json';
const LONGEST_NAME = 60;

/** A name that every file system takes: the bike's letters and digits, of whatever script, with dashes between. */
export function bikeFileName(bikeName: string, ending = ENDING): string {
  const plain = [...bikeName.normalize('NFC').toLowerCase()].slice(0, LONGEST_NAME).join('');
  const safe = plain.replace(/[^\p{L}\p{M}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '');
  return `${safe === '' ? 'bike' : safe}${ending}`;
}
