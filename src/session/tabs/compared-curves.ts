/** One reading of several setups along one axis, over one another. */
import type { Reading } from '../../core/readings/reading.ts';
import type { RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import { CURVE_AXES, nameAxis, type CurveAxis } from '../../curves/curve-axes.ts';
import { axisEnds, curveSet, type CurveSet, type CurveSource } from '../../curves/curve-set.ts';
import type { Compared } from './comparison.svelte.ts';

/** The axes that mean the same on all of these bikes; adjusters do where the bikes have the same measured parts. */
export function sharedAxes(compared: readonly Compared[]): readonly CurveAxis[] {
  const alike = compared.every(({ apart }) => apart.length === 0);
  return CURVE_AXES.filter((axis) =>
    compared.every((each) => axis.applies(each.bike) && (alike || axis.axis(each).kind === 'travel')),
  );
}

/** The curves of all, along an axis long enough for each; null without any. */
export function comparedCurves(
  compared: readonly Compared[],
  reading: Reading,
  axis: CurveAxis,
  state: RideStateKey,
): CurveSet | null {
  const [first, ...others] = compared.map(({ letter, slot, bike, setup, stood }): CurveSource => ({
    name: letter,
    of: 'compared',
    slot,
    bike,
    setup,
    state: 'stance' in stood ? stood.asked.state : state,
    stance: 'stance' in stood ? stood.stance : stood,
  }));
  if (first === undefined) return null;
  const ends = [first, ...others].map((source) => axisEnds(axis, source));
  const from = Math.min(...ends.map((each) => each.from));
  const to = Math.max(...ends.map((each) => each.to));
  return curveSet(reading, nameAxis(axis, first.bike.drive.kind), [first, ...others], { from, to });
}
