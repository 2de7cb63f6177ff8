/** The help of the plan command: its forms, and every adjuster, reading and ride state by name. */
import { adjusterLabel } from '../core/adjusters/named-adjusters.ts';
import { ADJUSTERS } from '../core/adjusters/all-adjusters.ts';
import { tyresForRim } from '../core/parts/common-tyres.ts';
import { searchable } from '../core/plan/prepare-adjusters.ts';
import { usualMinutes } from '../core/plan/usual-minutes.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { RIDE_STATES } from '../core/riding/states/all-ride-states.ts';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import type { BikeWithSetup } from '../document/document.ts';
import { textTable } from './text-table.ts';

/** The help text; the adjusters are those that may be turned on the bike of `of`, with its ranges. */
export function planHelp({
  bike,
  setup,
}: BikeWithSetup & { readonly bike: { readonly name: string } }): string {
  const adjusters = ADJUSTERS.flatMap((adjuster) => {
    if (adjuster.holds === 'tyre') {
      const sizes = tyresForRim(adjuster.key, setup[adjuster.key]);
      const codes = sizes.map((tyre) => ('code' in tyre ? tyre.code : '')).join(' ');
      return [
        [
          adjuster.key,
          codes === '' ? 'sizes to be named' : codes,
          `${usualMinutes(adjuster)} min`,
          adjusterLabel(adjuster.key, bike.drive.kind),
        ],
      ];
    }
    const found = searchable(adjuster, bike, setup);
    if ('ok' in found) return [];
    const range = `${found.least} to ${found.most} in steps of ${found.step}`;
    return [
      [adjuster.key, range, `${usualMinutes(adjuster)} min`, adjusterLabel(adjuster.key, bike.drive.kind)],
    ];
  });
  return `Finds setups of whole workshop steps that reach targets, and prints them as JSON.

  npm run plan -- FILE --target swingarmAngle@toppedOut=12.2 --keep trail@riderUp --with shockLength,forkTubes=0..10
  node src/commands/plan.js FILE …    the same without npm's own lines

  --target READING@STATE=VALUE        a value; VALUE±0.1 (or VALUE+-0.1) says how near is near enough
  --target READING@STATE=LEAST..MOST  anything in a window; LEAST.. is no less, ..MOST no more, and now.. or ..now
                                     means no less or no more than it is now
  --keep READING@STATE                as it is now; also with ±
  --keep sag                          the travel used at both ends with the rider on board
  --with ADJUSTER[=LEAST..MOST[/STEP]],…   what may be turned; left out, its own range and step on this bike
  --with rearTyre[=180/60-17+190/55-17]   tyres: these sizes, or common ones that the rim takes
  --minutes ADJUSTER=N                minutes of work for turning it

A weight behind a target, as in VALUE x3, makes its miss count so many times. Without ± a target is met within half
the change that a rider notices. Every combination is tried, up to 1 000 000. Plans are ranked by how far the readings are from
their targets, in changes that a rider notices; an hour of work counts as much as one. Progress goes to the error
stream. Where nothing is found the JSON says why, with the smallest change of one target that gives a plan, and the
range that gives one when it is let out by the fewest steps. Ctrl+C ends the search and prints what was found until
then, with exit code 130. The exit code is 1, with one line, when the request makes no sense.

Adjusters on "${bike.name}":
${textTable([['KEY', 'RANGE', 'WORK', 'NAME'], ...adjusters])}

Readings, with their units:
${textTable([['KEY', 'UNIT', 'NAME'], ...READINGS.map(({ key, quantity, label }) => [key, QUANTITIES[quantity].fileUnit, label])])}

Ride states:
${textTable([['KEY', 'NAME'], ...RIDE_STATES.map(({ key, label }) => [key, label])])}
`;
}
