/** Fits a bike to a sheet of measurements, and prints it with the ± of every reading. */
import { fail, succeed, type Result } from '../core/numeric/result.ts';
import { measureBike } from '../core/measure/measure-bike.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { FORMAT, SCHEMA, type BikeDocument } from '../document/document.ts';
import { measuredChange, type MeasuredChange } from '../core/measure/spread/measured-change.ts';
import { setAdjusterFromWords } from './set-adjuster.ts';
import { measureJsonSchema } from './measure-schema.ts';
import { kindsText, noMeasureWords } from './measure-words.ts';
import { nearestName } from './nearest-name.ts';
import { readMeasureFile, type MeasureFile } from './read-measure-file.ts';
import { textOf } from './open-file.ts';
import type { Outcome } from './outcome.ts';

const HELP = `Fits a bike to a sheet of measurements and prints it as JSON.

  npm run measure -- FILE [--for READING] [--set ADJUSTER=VALUE …]
  npm run measure -- --kinds      kinds of measurement, parts and states, with units and standard deviations
  npm run measure -- --schema     the description of FILE as JSON Schema
  node src/commands/measure.js FILE    the same without npm's own lines

FILE is a bike saved with the rows that it was measured by, or a sheet: {"format": "sidestance-measure", "schema": 1,
"start": "roadSport", "rows": [{"kind": "distance", "parts": ["pivot", "rearAxle"], "figure": "580 mm"}, …]}. A row may
name "state", "sd", "outOfPlane", "fromOther" and "off", and a sheet may have "photos".

--for chooses the reading that the next measurement is to help most, trail when nothing is chosen. --set also prints
"change": by how much the readings topped out differ with these adjusters, each with its own u, which is far smaller
because errors in common cancel.

"status" is solved, notFixed, disagrees or twoAnswers; readings have "value", "unit", "u" (one standard deviation) and
"fixed". "repairs" says what had to be changed so that FILE could be read. The exit code is 1, with one line, when a
row cannot be read or cannot be.
`;

interface Request {
  readonly file: string | null;
  readonly wanted: string | null;
  readonly sets: readonly string[];
  readonly show: 'help' | 'kinds' | 'schema' | 'fit';
}

function requestFrom(args: readonly string[]): Result<Request, string> {
  const files: string[] = [];
  let wanted: string | null = null;
  const sets: string[] = [];
  let show: Request['show'] = 'fit';
  for (let i = 0; i < args.length; i++) {
    const arg = args[i];
    if (arg === '--help' || arg === '-h') show = 'help';
    else if (arg === '--kinds') show = 'kinds';
    else if (arg === '--schema') show = 'schema';
    else if (arg === '--for') {
      i++;
      if (i === args.length) return fail('--for takes the name of a reading, as in --for trail.');
      wanted = args[i];
    } else if (arg === '--set') {
      i++;
      if (i === args.length) return fail('--set takes an adjuster and its value, as in --set forkTubes=5.');
      sets.push(args[i]);
    } else if (arg.startsWith('-')) return fail(`There is no option ${arg}; --help lists them.`);
    else files.push(arg);
  }
  if (files.length > 1) return fail(`One file at a time, not ${files.length}: ${files.join(', ')}.`);
  if (files.length === 0 && show === 'fit') return fail('Which file? npm run measure -- FILE, or --help.');
  return succeed({ file: files[0] ?? null, wanted, sets, show });
}

/** Everything the command does except writing to the streams. */
export function measureCommand(args: readonly string[]): Outcome {
  const refused = (line: string): Outcome => ({ code: 1, out: '', err: `${line}\n` });
  const request = requestFrom(args);
  if (!request.ok) return refused(request.reason);
  const { file, show } = request.value;
  if (show === 'kinds') return { code: 0, out: kindsText(), err: '' };
  if (show === 'schema')
    return { code: 0, out: `${JSON.stringify(measureJsonSchema(), null, 2)}\n`, err: '' };
  if (show === 'help' || file === null) return { code: 0, out: HELP, err: '' };
  const text = textOf(file);
  if (!text.ok) return refused(text.reason);
  const read = readMeasureFile(text.value);
  if (!read.ok) return refused(read.reason);
  const { start, sheet } = read.value;
  const wanted = request.value.wanted ?? read.value.wanted ?? 'trail';
  const keys = READINGS.map(({ key }) => key);
  if (!keys.includes(wanted))
    return refused(`There is no reading “${wanted}”; the nearest is “${nearestName(wanted, keys)}”.`);
  const found = measureBike({ start, sheet, wanted });
  if (!found.ok) return refused(noMeasureWords(found));
  const { bike, setup, ...rest } = found;
  const change = changeOf({ start, sheet }, request.value.sets);
  if (!change.ok) return refused(change.reason);
  const { repairs } = read.value;
  const printed = {
    ...rest,
    ...(change.value !== null && { change: change.value }),
    ...(repairs.length > 0 && { repairs }),
    bike,
    setup,
  };
  return { code: 0, out: `${JSON.stringify(printed, null, 2)}\n`, err: '' };
}

/** What the adjusters set on the command line change, topped out with exact steps; null where none is set. */
function changeOf(
  { start, sheet }: Pick<MeasureFile, 'start' | 'sheet'>,
  sets: readonly string[],
): Result<MeasuredChange['readings'] | null, string> {
  if (sets.length === 0) return succeed(null);
  let document: BikeDocument = { format: FORMAT, schema: SCHEMA, ...start, baseline: start };
  for (const words of sets) {
    const set = setAdjusterFromWords(document, words);
    if (!set.ok) return set;
    document = set.value.document;
  }
  const found = measuredChange({
    start,
    sheet,
    from: start.setup,
    to: document.setup,
    ride: 'toppedOut',
    stepSd: 0,
  });
  return found.ok ? succeed(found.readings) : fail(noMeasureWords(found));
}

/** `args` are the command's arguments; the result is the exit code. */
export function run(args: readonly string[]): number {
  const { code, out, err } = measureCommand(args);
  process.stderr.write(err);
  process.stdout.write(out);
  return code;
}
