/** Tests of reading the port. */
import { expect, it } from 'vitest';
import { readPort } from './port.js';

it('the argument wins over the environment, and that over the usual port', () => {
  expect(readPort(['--port', '5001'], '5002')).toBe(5001);
  expect(readPort(['--port=5001'], '5002')).toBe(5001);
  expect(readPort([], '5002')).toBe(5002);
  expect(readPort([], undefined)).toBe(4780);
  expect(readPort([], '')).toBe(4780);
});

it('what is not a port is refused, not replaced', () => {
  for (const bad of ['abc', '0', '65536', '-1', '80.5', ''])
    expect(readPort(['--port', bad], undefined)).toBeUndefined();
  expect(readPort(['--port'], undefined)).toBeUndefined();
});
