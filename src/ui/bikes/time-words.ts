/** When a bike was saved, as the list and the cards write it. */
const SAVED_AT = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  hour: '2-digit',
  minute: '2-digit',
});

/** `time` in ms since 1970, UTC; written in the clock of the device. */
export function timeWords(time: number): string {
  return SAVED_AT.format(time);
}
