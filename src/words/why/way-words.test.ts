/** Tests of the headline on the way from before to now. */
import { expect, it } from 'vitest';
import { headlineOnWay } from './way-words.ts';

it('says of a change that it is to come, on its way or there, by what the picture shows', () => {
  const at = (part: number) => headlineOnWay('The seat is higher.', part);
  expect(at(0)).toBe('To come: The seat is higher.');
  for (const part of [0.01, 0.5, 0.99]) expect(at(part)).toBe('On the way to: The seat is higher.');
  expect(at(1)).toBe('Now: The seat is higher.');
});
