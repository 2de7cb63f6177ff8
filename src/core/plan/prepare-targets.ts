/** Targets checked and worked out as intervals. */
import type { Setup } from '../adjusters/setup.ts';
import type { Bike } from '../parts/bike.ts';
import { READINGS } from '../readings/all-readings.ts';
import { metricReading } from '../readings/metric-reading.ts';
import { standBike } from '../riding/stand-bike.ts';
import { QUANTITIES } from '../units/all-quantities.ts';
import type { PreparedTarget } from './prepared.ts';
import { noProblem, type NoProblem, type Problem, type Target } from './problem.ts';

/** The tolerance where none is given, as a part of the change that a rider notices. */
const USUAL_TOLERANCE = 0.5;

/** The targets of a problem in the order given, or why they cannot be searched for. */
export function prepareTargets({ bike, setup, targets }: Problem): readonly PreparedTarget[] | NoProblem {
  if (targets.length === 0) return noProblem('noTargets');
  const prepared: PreparedTarget[] = [];
  for (const [place, target] of targets.entries()) {
    const found = prepareTarget(target, place, bike, setup);
    if ('ok' in found) return found;
    const other = prepared.findIndex(
      (each) =>
        each.reading === found.reading &&
        each.state === found.state &&
        (each.most < found.least || found.most < each.least),
    );
    if (other >= 0) return noProblem('targetsContradict', { target: place, other });
    prepared.push(found);
  }
  return prepared;
}

function prepareTarget(target: Target, place: number, bike: Bike, setup: Setup): PreparedTarget | NoProblem {
  const { state, want, weight = 1 } = target;
  const reading = READINGS.find(({ key }) => key === target.reading);
  if (reading === undefined) return noProblem('readingUnknown', { target: place });
  if (!Number.isFinite(weight)) return noProblem('inputNotANumber', { target: place });
  if (!(weight > 0)) return noProblem('weightNotPositive', { target: place, found: weight });
  const { noticed } = QUANTITIES[reading.quantity];
  const of = { reading, state, perUnit: weight / noticed };
  if (want.kind === 'window') {
    const { least, most } = want;
    if (!Number.isFinite(least) || !Number.isFinite(most))
      return noProblem('inputNotANumber', { target: place });
    return least > most
      ? noProblem('windowReversed', { target: place, found: least, limit: most })
      : { ...of, least, most, aim: null };
  }
  const ownNow = (): number | NoProblem => {
    const present = standBike(bike, setup, state);
    if (!present.ok) return noProblem('nothingToKeep', { target: place, noStand: present });
    const value = metricReading(reading, present);
    return typeof value === 'number' ? value : noProblem('nothingToKeep', { target: place, absent: value });
  };
  if (want.kind !== 'value' && want.kind !== 'keep') {
    const edge = want.value ?? ownNow();
    if (typeof edge !== 'number') return edge;
    if (!Number.isFinite(edge)) return noProblem('inputNotANumber', { target: place });
    const ends = want.kind === 'atLeast' ? { least: edge, most: Infinity } : { least: -Infinity, most: edge };
    return { ...of, ...ends, aim: null };
  }
  const { tolerance = USUAL_TOLERANCE * noticed } = want;
  if (!Number.isFinite(tolerance)) return noProblem('inputNotANumber', { target: place });
  if (tolerance < 0) return noProblem('toleranceNegative', { target: place, found: tolerance });
  const aim = want.kind === 'value' ? want.value : ownNow();
  if (typeof aim !== 'number') return aim;
  if (!Number.isFinite(aim)) return noProblem('inputNotANumber', { target: place });
  return { ...of, least: aim - tolerance, most: aim + tolerance, aim };
}
