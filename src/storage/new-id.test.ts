/** Tests of making names. */
import { expect, it } from 'vitest';
import { newId } from './new-id.ts';

it('makes names that differ', () => {
  const names = Array.from({ length: 1000 }, newId);
  expect(new Set(names).size).toBe(1000);
  expect(names[0]).toMatch(/^[0-9a-f]{32}$/);
});
