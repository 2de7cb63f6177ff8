/** Tests of what a number field shows and takes. */
import { describe, expect, it } from 'vitest';
import type { NumberStyle } from '../../../core/units/number-style.ts';
import { fieldNumber, readTyped, stepText, stepsOfKey, typedAdvice } from './number-text.ts';

const metric: NumberStyle = { system: 'metric', decimal: '.' };
const german: NumberStyle = { system: 'metric', decimal: ',' };
const inch: NumberStyle = { system: 'inch', decimal: '.' };

describe('the text of a field', () => {
  it('shows the digits of the quantity, and more only where the value needs them', () => {
    expect(fieldNumber(5, 'length', metric).digits).toBe('5.0');
    expect(fieldNumber(0.75, 'length', metric).digits).toBe('0.75');
    expect(fieldNumber(-2.5, 'length', german).digits).toBe('−2,5');
    expect(fieldNumber(25.4, 'length', inch).digits).toBe('1.00');
    expect(fieldNumber(5, 'length', inch).digits).toBe('0.197');
    expect(fieldNumber(16, 'teeth', inch).digits).toBe('16');
  });

  it('is read back as a value nobody can tell from the first', () => {
    for (const style of [metric, german, inch]) {
      for (const value of [-30, -0.75, 0, 0.5, 1, 12.3, 611.27]) {
        const back = readTyped(fieldNumber(value, 'length', style).digits, 'length', style, {});
        expect(back.ok && Math.abs(back.value - value)).toBeLessThanOrEqual(0.0128);
      }
    }
  });
});

describe('typed words', () => {
  const limits = { least: -30, most: 30 };

  it('are taken in either system and with a unit', () => {
    expect(readTyped('1 in', 'length', metric, limits)).toEqual({ ok: true, value: 25.4 });
    expect(readTyped('12,5', 'length', metric, limits)).toEqual({ ok: true, value: 12.5 });
    expect(readTyped('1', 'length', inch, limits)).toEqual({ ok: true, value: 25.4 });
  });

  it('may repeat a limit as it is shown', () => {
    expect(readTyped('1.181', 'length', inch, limits)).toEqual({ ok: true, value: 29.9974 });
    expect(readTyped('-1.1812', 'length', inch, limits)).toEqual({ ok: true, value: -30 });
    const travel = { least: 0, most: 123.46 };
    expect(readTyped('123.5', 'length', metric, travel)).toEqual({ ok: true, value: 123.46 });
    expect(readTyped('123.6', 'length', metric, travel)).toEqual({ ok: false, reason: 'aboveRange' });
  });

  it('are refused outside the range, with the range and its unit as advice', () => {
    const read = readTyped('31', 'length', metric, limits);
    expect(read).toEqual({ ok: false, reason: 'aboveRange' });
    expect(typedAdvice('aboveRange', 'length', metric, limits)).toBe(
      'This goes from −30.0\u00a0mm to 30.0\u00a0mm.',
    );
    expect(typedAdvice('belowRange', 'length', inch, { least: 0 })).toBe('This is at least 0.00\u00a0in.');
    expect(typedAdvice('aboveRange', 'angle', german, { most: 3 })).toBe('This is at most 3,00°.');
  });

  it('name what ends the range where they pass it, and at that end only', () => {
    const teeth = { least: 12, most: 40, ends: { least: 'A smaller one does not go over the shaft.' } };
    const small = readTyped('9', 'teeth', metric, teeth);
    expect(small).toEqual({ ok: false, reason: 'belowRange' });
    expect(typedAdvice('belowRange', 'teeth', metric, teeth)).toMatch(/40.*\. A smaller one does not go/);
    expect(typedAdvice('aboveRange', 'teeth', metric, teeth)).not.toContain('smaller');
  });

  it('count teeth whole', () => {
    expect(readTyped('15.5', 'teeth', metric, {})).toEqual({ ok: false, reason: 'notWhole' });
  });

  it('get an example within the range when they are no number', () => {
    expect(typedAdvice('notANumber', 'length', german, limits)).toContain('12,5');
    expect(typedAdvice('notANumber', 'angle', metric, { least: -3, most: 3 })).toContain('3.00');
  });
});

describe('a step', () => {
  it('leaves no rounding noise and stays within the limits', () => {
    expect(stepText(0.1, 1, 0.2, 'length', {})).toBe(0.3);
    expect(stepText(29.8, 1, 0.5, 'length', { most: 30 })).toBe(30);
    expect(stepText(5, 0, 1, 'teeth', {})).toBe(5);
  });

  it('of a tenth is a whole tooth, link or part', () => {
    expect(stepText(16, -0.1, 1, 'teeth', {})).toBe(15);
    expect(stepText(16, 10, 1, 'teeth', {})).toBe(26);
    expect(stepText(20, 0.1, 1, 'links', {})).toBe(21);
    expect(stepText(1, 0.1, 1, 'count', { least: 1, most: 2 })).toBe(2);
  });

  it('follows arrows and Page keys, not shortcuts', () => {
    const key = (name: string, more = {}) =>
      stepsOfKey({ key: name, shiftKey: false, altKey: false, ctrlKey: false, metaKey: false, ...more });
    expect(key('ArrowUp')).toBe(1);
    expect(key('ArrowDown', { shiftKey: true })).toBe(-10);
    expect(key('ArrowUp', { altKey: true })).toBe(0.1);
    expect(key('PageDown')).toBe(-10);
    expect(key('ArrowUp', { ctrlKey: true })).toBeNull();
    expect(key('a')).toBeNull();
  });
});

describe('three digits behind a separator', () => {
  const style = { system: 'metric', decimal: '.' } as const;
  const read = (text: string, expected: number) => readTyped(text, 'length', style, { expected });

  it('are asked about where a figure above a hundred is expected', () => {
    for (const text of ['1,420', '1.420', '1,420 mm', '12,500'])
      expect(read(text, 1412)).toEqual({ ok: false, reason: 'thousands' });
    expect(typedAdvice('thousands', 'length', style, {})).toMatch(/thousands or one with decimals/);
  });

  it('are decimals where a small figure is expected, or where the number is a large one all the same', () => {
    expect(read('1,420', 25)).toEqual({ ok: true, value: 1.42 });
    expect(read('812,345', 810)).toEqual({ ok: true, value: 812.345 });
  });

  it('of another number are taken as before', () => {
    expect(read('1420', 1412)).toEqual({ ok: true, value: 1420 });
    expect(read('1,42', 1412)).toEqual({ ok: true, value: 1.42 });
  });
});

it('a number as computers write it is no number', () => {
  for (const text of ['0x10', '1e3', 'Infinity', 'NaN'])
    expect(readTyped(text, 'rate', { system: 'metric', decimal: '.' }, {}).ok, text).toBe(false);
});
