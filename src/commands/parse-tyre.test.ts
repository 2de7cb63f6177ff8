/** Tests of reading a typed tyre. */
import { expect, it } from 'vitest';
import { parseTyre } from './parse-tyre.ts';

const read = (text: string) => {
  const parsed = parseTyre(text, 'metric');
  return parsed.ok ? parsed.value : parsed.reason;
};

it('reads a size code as it stands on the sidewall', () => {
  expect(read(' 190/55-17 ')).toEqual({ code: '190/55-17' });
  expect(read('120/70 ZR17 M/C 58W')).toEqual({ code: '120/70 ZR17 M/C 58W' });
});

it('reads a measured diameter or circumference in the user’s unit or in the one it names', () => {
  expect(read('640')).toEqual({ diameter: 640 });
  expect(read('diameter=640,5')).toEqual({ diameter: 640.5 });
  expect(read('Circumference = 2010 mm')).toEqual({ circumference: 2010 });
  expect(read('25 in')).toEqual({ diameter: 635 });
  expect(parseTyre('25', 'inch')).toEqual({ ok: true, value: { diameter: 635 } });
});

it('says why a text is no tyre', () => {
  expect(read('')).toBe('empty');
  expect(read('round')).toBe('tyreCodeUnreadable');
  expect(read('diameter=NaN')).toBe('tyreCodeUnreadable');
  expect(read('640 kg')).toBe('wrongUnit');
  expect(read('190/55')).toBe('tyreSizeImpossible');
  expect(read('64')).toBe('tyreSizeImpossible');
  expect(read('-640')).toBe('tyreSizeImpossible');
});
