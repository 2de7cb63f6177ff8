/** Tests of fetching panels after the first sight: one after another, each once, and again after a failure. */
import { flushSync } from 'svelte';
import { expect, it } from 'vitest';
import { LatePanels } from './late-panels.svelte.ts';

/** Panels that are mere names, which of them were fetched in which order, and which cannot be fetched for now. */
function begun(cut: readonly string[] = []) {
  const asked: string[] = [];
  const away = new Set(cut);
  const late = (key: string) => ({
    key,
    load: async () => {
      asked.push(key);
      await Promise.resolve();
      if (away.has(key)) throw new TypeError('no network');
      return { default: `the panel ${key}` };
    },
  });
  return { late: new LatePanels(['ride', 'springs', 'chain', 'curves'].map(late)), asked, away };
}

it('has no panel before it fetches one, and has not failed either', () => {
  const { late } = begun();
  expect(late.panel('chain')).toBeNull();
  expect(late.hasFailed('chain')).toBe(false);
});

it('fetches all one after another, and none twice', async () => {
  const { late, asked } = begun();
  await late.load('chain');
  await late.loadAll();
  await late.loadAll();
  expect(asked).toEqual(['chain', 'ride', 'springs', 'curves']);
  for (const key of asked) expect(late.panel(key)).toBe(`the panel ${key}`);
});

it('goes on past one that cannot be fetched, and says which that was', async () => {
  const { late } = begun(['springs']);
  await late.loadAll();
  expect(late.panel('springs')).toBeNull();
  expect(late.hasFailed('springs')).toBe(true);
  expect(late.panel('curves')).toBe('the panel curves');
  expect(late.hasFailed('curves')).toBe(false);
});

it('takes the failure back while it tries again, and has the panel once it comes', async () => {
  const { late, away } = begun(['springs']);
  await Promise.all([late.load('springs'), late.load('springs')]);
  expect(late.hasFailed('springs')).toBe(true);
  away.clear();
  const again = late.load('springs');
  expect(late.hasFailed('springs')).toBe(false);
  await again;
  expect(late.panel('springs')).toBe('the panel springs');
  expect(late.hasFailed('springs')).toBe(false);
});

it('fetches once for an effect that asks before the panel is here, and does not run that effect again', async () => {
  const { late, asked } = begun();
  let isOpen = $state(false);
  let runs = 0;
  const end = $effect.root(() => {
    $effect(() => {
      runs += 1;
      if (isOpen) void late.load('chain');
    });
  });
  flushSync();
  isOpen = true;
  flushSync();
  await late.load('chain');
  flushSync();
  expect(late.panel('chain')).toBe('the panel chain');
  expect(new Set(asked)).toEqual(new Set(['chain']));
  expect(runs).toBe(2);
  end();
});
