/** The standard deviations that a fit carries on, against published examples of propagation. */
import { expect, it } from 'vitest';
import { spread } from '../../src/core/measure/measured-readings.ts';
import { forwardSolved, lowerFactor } from '../../src/core/numeric/lower-factor.ts';
import { singularValues } from '../../src/core/numeric/singular-values.ts';

type Figure = (values: readonly number[]) => number;

/** Standard deviation of a figure of inputs with this covariance, as a fit of one row for each input carries it on. */
function carried(
  values: readonly number[],
  covariance: readonly (readonly number[])[],
  figure: Figure,
): number {
  const factor = lowerFactor(covariance);
  if (factor === null) throw new Error('no covariance');
  const parts = singularValues(
    values.map((_, j) =>
      forwardSolved(
        factor,
        values.map((_, i) => (i === j ? 1 : 0)),
      ),
    ),
  );
  const slopes = values.map((_, j) => {
    const step = 1e-4 * Math.sqrt(covariance[j][j]);
    const by = (sign: number) => figure(values.map((value, i) => value + (i === j ? sign * step : 0)));
    return (by(1) - by(-1)) / (2 * step);
  });
  return spread({ parts, rank: values.length }, slopes) ?? NaN;
}

const independent = (us: readonly number[]): number[][] =>
  us.map((u, i) => us.map((_, j) => (i === j ? u * u : 0)));

// Source: BIPM, JCGM 100 (GUM); Guide to the expression of uncertainty in measurement; 2008; H.1, end gauge.
it('an end gauge of 50 000 838 nm is known to 32 nm', () => {
  // Length of the standard, difference, expansion's difference, temperature off 20 °C, expansion, temperature's difference.
  const values = [50_000_623, 215, 0, -0.1, 11.5e-6, 0];
  const covariance = independent([25, 9.7, 0.58e-6, 0.41, 1.2e-6, 0.029]);
  const length: Figure = ([standard, difference, a, t, expansion, dt]) =>
    standard + difference - standard * (a * t + expansion * dt);
  expect(length(values)).toBeCloseTo(50_000_838, 0);
  expect(Math.round(carried(values, covariance, length))).toBe(32);
});

// Source: BIPM, JCGM 100 (GUM); Guide to the expression of uncertainty in measurement; 2008; H.2, simultaneous resistance and reactance.
it('correlated voltage, current and phase give resistance, reactance and impedance with their ±', () => {
  const values = [4.999, 19.661e-3, 1.04446];
  const us = [3.2e-3, 9.5e-6, 7.5e-4];
  const r = [
    [1, -0.36, 0.86],
    [-0.36, 1, -0.65],
    [0.86, -0.65, 1],
  ];
  const covariance = r.map((row, i) => row.map((each, j) => each * us[i] * us[j]));
  const expected: readonly (readonly [Figure, number, number, number])[] = [
    [([v, i, phase]) => (v / i) * Math.cos(phase), 127.732, 0.07, 0.071],
    [([v, i, phase]) => (v / i) * Math.sin(phase), 219.847, 0.295, 0.296],
    [([v, i]) => v / i, 254.26, 0.236, 0.237],
  ];
  for (const [figure, value, least, most] of expected) {
    expect(figure(values)).toBeCloseTo(value, 2);
    const u = carried(values, covariance, figure);
    // The printed correlations have two digits, which moves the third of the result.
    expect(u).toBeGreaterThan(least * 0.99);
    expect(u).toBeLessThan(most * 1.01);
  }
});

// Source: BIPM, JCGM 101; Propagation of distributions using a Monte Carlo method; 2008; 9.2, additive model.
it('four inputs of 1 sum to 2.00, and one of 10 with three of 1 to 10.1', () => {
  const sum: Figure = (values) => values.reduce((total, each) => total + each, 0);
  expect(carried([0, 0, 0, 0], independent([1, 1, 1, 1]), sum)).toBeCloseTo(2, 10);
  expect(carried([0, 0, 0, 0], independent([1, 1, 1, 10]), sum)).toBeCloseTo(10.1, 1);
});

// Source: BIPM, JCGM 101; Propagation of distributions using a Monte Carlo method; 2008; 9.2, additive model.
it('95 % by a normal distribution is 1 % wide of four even inputs and too wide where one even input rules', () => {
  const sum: Figure = (values) => values.reduce((total, each) => total + each, 0);
  const wide = (us: readonly number[]) =>
    1.96 *
    carried(
      us.map(() => 0),
      independent(us),
      sum,
    );
  expect(wide([1, 1, 1, 1]) / 3.88).toBeCloseTo(1.01, 2);
  expect(wide([1, 1, 1, 10])).toBeGreaterThan(17);
});

// Source: NIST; Technical Note 1900, Simple guide for evaluating the uncertainty of measurement results; 2015; E13, thermal expansion.
it('a copper bar expands by 1.7266e-5 a kelvin, known to 1.76e-6', () => {
  const values = [1.4999, 1.5021, 288.15, 373.1];
  const expansion: Figure = ([l0, l1, t0, t1]) => (l1 - l0) / (l0 * (t1 - t0));
  expect(expansion(values)).toBeCloseTo(1.7266e-5, 9);
  expect(carried(values, independent([1e-4, 2e-4, 0.02, 0.05]), expansion)).toBeCloseTo(1.76e-6, 8);
});
