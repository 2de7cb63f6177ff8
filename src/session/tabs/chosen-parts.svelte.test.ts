/** Tests of the parts of tabs that were looked at last. */
import { expect, it } from 'vitest';
import { ChosenParts } from './chosen-parts.svelte.ts';

it('each tab keeps its own part, and opens on its first until one is chosen', () => {
  const parts = [{ key: 'axle' }, { key: 'slack' }] as const;
  const chosen = new ChosenParts();
  expect(chosen.of('chain', 'axle', parts)).toBe('axle');
  chosen.choose('chain', 'slack');
  chosen.choose('ride', 'sag');
  expect(chosen.of('chain', 'axle', parts)).toBe('slack');
  // A part that a tab no longer has is as if none was chosen.
  expect(chosen.of('ride', 'axle', parts)).toBe('axle');
});
