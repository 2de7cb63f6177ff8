/** What the side view shows beside a hand: the line below it and the list of points on one spot; both come after the first sight. */
export { default as HandleChooser } from './handle-chooser.svelte';
export { default as HandLine } from './hand-line.svelte';
