/** Tests of curves for several bikes, their words and their rows. */
import { CHAIN } from '../core/parts/drive-noun.ts';
import { describe, expect, it } from 'vitest';
import { linkedBike, sprungSetup } from '../../tests/support/linked-bike.ts';
import { plainBike, plainSetup } from '../../tests/support/plain-bike.ts';
import { READINGS } from '../core/readings/all-readings.ts';
import { antiSquat } from '../core/readings/anti-squat.ts';
import { trail } from '../core/readings/trail.ts';
import type { RideStateKey } from '../core/riding/states/all-ride-states.ts';
import { standBike } from '../core/riding/stand-bike.ts';
import { QUANTITIES } from '../core/units/all-quantities.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import type { Bike } from '../core/parts/bike.ts';
import type { Setup } from '../core/adjusters/setup.ts';
import { neutralAntiSquat } from '../core/readings/neutral-anti-squat.ts';
import { zoneOf as zoneOnSideView } from '../scene/construction/zones.ts';
import { chartOf } from './chart.ts';
import { CURVE_AXES, nameAxis } from './curve-axes.ts';
import { axisEnds, curveSet, evenCurve, sameLine, type CurveSource } from './curve-set.ts';
import { curveCsv, curveRows, fewRows, hereText } from './curve-table.ts';
import { neutralZone, type NeutralZone } from './neutral-zone.ts';
import {
  bandWords,
  chartNotes,
  courseWords,
  stretchesOf,
  zoneOf,
  zoneWords,
} from '../words/kept/curve-words.ts';

const style: NumberStyle = { system: 'metric', decimal: '.' };
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

function source(bike: Bike, setup: Setup, state: RideStateKey, name = 'Now'): CurveSource {
  const stance = standBike(bike, setup, state);
  if (!stance.ok) throw new Error(stance.reason);
  return {
    name,
    of: name === 'Now' ? 'now' : 'kept',
    slot: name === 'Now' ? null : 0,
    bike,
    setup,
    state,
    stance,
  };
}

const axis = (key: string) => {
  const found = CURVE_AXES.find((each) => each.key === key);
  if (found === undefined) throw new Error(`no axis ${key}`);
  return nameAxis(found, 'chain');
};

const asSet = source(plainBike, plainSetup, 'travelByHand');

describe('a curve', () => {
  it('over rear travel is what the bike reads when set there, at every place', () => {
    const [{ curve }] = curveSet(antiSquat, axis('rearTravel'), [asSet]).curves;
    // Even places, and the one where it stands.
    expect(curve.x).toHaveLength(122);
    expect(curve.x).toContain(40);
    curve.x.forEach((rearTravelUsed, i) => {
      const on = standBike(plainBike, { ...plainSetup, rearTravelUsed }, 'travelByHand');
      if (!on.ok) throw new Error(on.reason);
      expect(curve.y[i]).toBe(antiSquat.read(on));
    });
  });

  it('over an adjuster is what the bike reads in its ride state with the adjuster there', () => {
    const now = source(linkedBike, sprungSetup, 'riderUp');
    for (const reading of READINGS) {
      const [{ curve }] = curveSet(reading, axis('shockPreload'), [now]).curves;
      for (const i of [0, 60, 120]) {
        const on = standBike(linkedBike, { ...sprungSetup, shockPreload: curve.x[i] }, 'riderUp');
        if (!on.ok) throw new Error(on.reason);
        const value = reading.read(on);
        if (typeof value !== 'number') expect(curve.y[i]).toBe(value);
        else expect(curve.y[i]).toBeCloseTo(QUANTITIES[reading.quantity].fromCore(value), 5);
      }
    }
  });

  it('runs as far as the bike stands, and its notes say what ends it', () => {
    const set = curveSet(trail, axis('bothTravels'), [asSet]);
    expect(chartNotes(set, CHAIN, style)).toEqual([]);
    const accelerating = curveSet(trail, axis('acceleration'), [
      source(linkedBike, sprungSetup, 'accelerating'),
    ]);
    expect(plain(chartNotes(accelerating, CHAIN, style)[0])).toMatch(
      /^Stops before 1\.\d\d g\. .*the front wheel lifts/,
    );
  });

  it('ends with the travel of its own bike where another goes further, and the notes say no more than that', () => {
    const longer = source(
      plainBike,
      { ...plainSetup, axlePosition: plainBike.swingarm.slot },
      'travelByHand',
    );
    const set = curveSet(trail, axis('rearTravel'), [longer, { ...asSet, name: 'Baseline', of: 'baseline' }]);
    expect(chartNotes(set, CHAIN, style).map(plain)).toEqual([
      'Baseline: Ends at 130.0 mm, the end of its rear travel.',
    ]);
  });

  it('lies under another that is the same, and the notes say so', () => {
    const set = curveSet(trail, axis('rearTravel'), [asSet, { ...asSet, name: 'Baseline', of: 'baseline' }]);
    expect(sameLine(set.curves[0].curve, set.curves[1].curve)).toBe(true);
    expect(chartNotes(set, CHAIN, style)).toEqual(['Baseline: the same line.']);
  });
});

describe('the words of a curve', () => {
  const set = curveSet(antiSquat, axis('rearTravel'), [asSet]);

  it('tell its course and where the bike is', () => {
    const words = plain(courseWords(set, style));
    const { curve, value } = set.curves[0];
    expect(words).toMatch(/^From [\d.]+ % at 0\.0 mm it falls to [\d.]+ % at 130\.0 mm\. Now /);
    expect(words).toContain(`From ${(curve.y[0] as number).toFixed(1)} %`);
    expect(words).toContain(`Now ${(value as number).toFixed(1)} % at 40.0 mm.`);
  });

  const neutral = neutralZone(
    5,
    evenCurve(neutralAntiSquat, axis('rearTravel'), axisEnds(axis('rearTravel'), asSet), asSet),
  );

  it('name the zones in order, meeting where the curve crosses', () => {
    const { curve } = set.curves[0];
    const parts = stretchesOf(set.curves[0], (y, x) => zoneOf(y, x, neutral));
    expect(parts.map(({ kind }) => kind)).toEqual([
      ...new Set(curve.y.map((y, i) => zoneOf(y as number, curve.x[i], neutral))),
    ]);
    parts.slice(1).forEach((part, i) => expect(part.from).toBe(parts[i].to));
    expect(plain(zoneWords(set, neutral, style))).toMatch(
      /^The squat line runs in the \S+ zone from 0\.0 to .* mm\.$/,
    );
  });

  it('put the bike in the zone in which the side view puts its squat line', () => {
    for (let rearTravelUsed = 0; rearTravelUsed <= 130; rearTravelUsed += 2) {
      const on = standBike(plainBike, { ...plainSetup, rearTravelUsed }, 'travelByHand');
      if (!on.ok) throw new Error(on.reason);
      const y = antiSquat.read(on);
      expect(zoneOf(y as number, rearTravelUsed, neutral), `${rearTravelUsed}`).toBe(zoneOnSideView(on, 5));
    }
  });

  it('tell over which part it lies within a band', () => {
    const ys = set.curves[0].curve.y as number[];
    const most = ys[0] - 1;
    expect(plain(bandWords(set, { least: ys[ys.length - 1], most }, style))).toMatch(
      /^Within the target band from .* to 130\.0 mm\.$/,
    );
    expect(bandWords(set, { least: 900, most: 901 }, style)).toBe('Nowhere within the target band.');
  });
});

describe('the figures of curves', () => {
  const kept = source(plainBike, { ...plainSetup, shockLength: 4 }, 'travelByHand', 'Kept 1');
  const set = curveSet(antiSquat, axis('rearTravel'), [asSet, kept]);

  it('are rows with a value for each curve, few of them from end to end on the page', () => {
    const rows = curveRows(set);
    expect(rows).toHaveLength(122);
    expect(rows[60].values).toEqual(set.curves.map(({ curve }) => curve.y[60]));
    const few = fewRows(rows, 13);
    const even = Array.from({ length: 13 }, (_, i) => (i * 130) / 12);
    expect(few.map(({ x }) => x)).toEqual(
      [...even, 40].sort((a, b) => a - b).map((x) => expect.closeTo(x, 9)),
    );
    expect(few.map(({ here }) => here).filter((here) => here.length > 0)).toEqual([['Now', 'Kept 1']]);
    expect(few.map(hereText).filter((text) => text !== '')).toEqual(['all']);
  });

  it('are CSV with units in the head, and semicolons where commas are decimals', () => {
    const lines = curveCsv(set, style).split('\r\n');
    expect(lines[0]).toBe(
      'Rear travel [mm],"Anti-squat, now [%]","Anti-squat, kept 1 [%]",Stands here,Why empty',
    );
    expect(lines).toHaveLength(124);
    expect(lines.find((line) => line.startsWith('40.00000,'))).toMatch(/,"Now; Kept 1",$/);
    const at65 = lines.find((line) => line.startsWith('65.00000,')) ?? '';
    const [x, y] = at65.split(',').map(Number);
    expect([x, y]).toEqual([
      65,
      Number((set.curves[0].curve.y[set.curves[0].curve.x.indexOf(65)] as number).toFixed(5)),
    ]);
    const comma = curveCsv(set, { system: 'metric', decimal: ',' }).split('\r\n');
    expect(comma.map((line) => line.split(';')[0])).toContain('65,00000');
  });

  it('have the ± of a measured bike beside its own curve, empty where nothing fixes it', () => {
    const spread = { x: [0, 60, 65, 130], u: [1, 1, null, null] };
    const lines = curveCsv(set, style, spread).split('\r\n');
    expect(lines[0]).toBe(
      'Rear travel [mm],"Anti-squat, now [%]",± of now [%],"Anti-squat, kept 1 [%]",Stands here,Why empty',
    );
    const plusMinusAt = (place: string): string | undefined =>
      lines.find((line) => line.startsWith(`${place},`))?.split(',')[2];
    expect(plusMinusAt('26.00000')).toBe('2.00000');
    expect(plusMinusAt('65.00000')).toBe('');
    const without = curveCsv(set, style).split('\r\n');
    expect(lines.map((line) => line.split(',').toSpliced(2, 1).join(','))).toEqual([
      lines[0].split(',').toSpliced(2, 1).join(','),
      ...without.slice(1),
    ]);
  });
});

describe('the chart', () => {
  const set = curveSet(antiSquat, axis('rearTravel'), [asSet]);
  const neutral = neutralZone(5, null);
  const asked = { set, style, widthPx: 600, heightPx: 200, textPx: 12, band: null, zones: null };

  it('draws the curve from end to end of the field, and the bike’s own place on it', () => {
    const chart = chartOf(asked);
    const shapes = chart.scene.flatMap((layer) => layer.shapes);
    const line = shapes.find((shape) => shape.kind === 'path' && shape.role === 'curveNow');
    if (line?.kind !== 'path') throw new Error('no line');
    const [first] = line.steps;
    const last = line.steps[line.steps.length - 1];
    expect([first, last]).toMatchObject([{ x: chart.leftPx }, { x: chart.rightPx }]);
    const mark = shapes.find((shape) => shape.kind === 'mark');
    if (mark?.kind !== 'mark') throw new Error('no mark');
    const part = (mark.at.x - chart.leftPx) / (chart.rightPx - chart.leftPx);
    expect(part).toBeCloseTo(40 / 130, 9);
  });

  it('draws zones behind anti-squat only with the zones switched on, and keeps neutral in sight', () => {
    const roles = (zones: NeutralZone | null) =>
      chartOf({ ...asked, zones }).scene[0].shapes.map((shape) => shape.role);
    expect(roles(null)).toEqual([]);
    expect(roles(neutral)).toContain('neutralZone');
  });
});
