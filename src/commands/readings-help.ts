/** The help of the command that prints readings: every adjuster, reading and ride state by name, with unit and range. */
import type { Adjuster } from '../core/adjusters/all-adjusters.ts';
import { namedAdjusters } from '../core/adjusters/named-adjusters.ts';
import { adjusterRange } from '../core/standing/adjuster-range.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { RIDE_STATES } from '../core/riding/states/all-ride-states.ts';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import type { BikeWithSetup } from '../document/document.ts';
import { adjusterUnit } from './set-adjuster.ts';
import { textTable } from './text-table.ts';

function range(adjuster: Adjuster, { bike, setup }: BikeWithSetup): string {
  if (adjuster.holds === 'tyre') return '190/55-17, diameter=640 or circumference=2010';
  if (adjuster.holds === 'wholeNumberOrNone') return 'a count such as 112, or none';
  const { least, most, step } = adjusterRange(adjuster, bike, setup);
  return `${least} to ${most} in steps of ${step}`;
}

/** The help text. Some ranges depend on the bike as it is set, so they are those of `of`. */
export function readingsHelp(of: BikeWithSetup): string {
  const { bike } = of;
  const adjusters = [
    ['KEY', 'UNIT', 'RANGE', 'NAME'],
    ...namedAdjusters(bike.drive.kind).map((adjuster) => [
      adjuster.key,
      adjusterUnit(adjuster),
      range(adjuster, of),
      adjuster.label,
    ]),
  ];
  const readings = [
    ['KEY', 'UNIT', 'NAME'],
    ...READINGS.map(({ key, quantity, label }) => [key, QUANTITIES[quantity].fileUnit, label]),
  ];
  const states = [['KEY', 'NAME'], ...RIDE_STATES.map(({ key, label }) => [key, label])];
  return `Prints the readings of a saved bike as JSON, in every ride state.

  npm run readings -- FILE [--set ADJUSTER=VALUE …]
  node src/commands/readings.js FILE [--set ADJUSTER=VALUE …]    the same without npm's own lines

Numbers are metric; a unit may be named, as in --set forkTubes="1/4 in". What was repaired on opening goes to
the error stream. A reading without a number has "value": null and a reason, a ride
state in which the bike does not come to rest has "noAnswer" and the reason. The exit code is 1 when there are no readings.

Adjusters, with their ranges on "${bike.name}":
${textTable(adjusters)}

Readings, with their units:
${textTable(readings)}

Ride states:
${textTable(states)}
`;
}
