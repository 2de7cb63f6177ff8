/** Several ride states drawn at once: which lines they have, where their signs are, and their words. */
import { CHAIN } from '../core/parts/drive-noun.ts';
import { describe, expect, it } from 'vitest';
import { antiSquat } from '../core/readings/anti-squat.ts';
import { frontWheelLoad } from '../core/readings/front-wheel-load.ts';
import { motionRatio } from '../core/readings/motion-ratio.ts';
import { trail } from '../core/readings/trail.ts';
import { standBike, type StandingBike } from '../core/riding/stand-bike.ts';
import { rideStateOf, RIDE_STATES, type RideStateKey } from '../core/riding/states/all-ride-states.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import type { LabelShape, MarkShape, Shape } from '../scene/shapes/shape.ts';
import { linkedBike, sprungSetup } from '../../tests/support/linked-bike.ts';
import { chartOf } from './chart.ts';
import { legendOf } from './chart-legend.ts';
import { CURVE_AXES, nameAxis } from './curve-axes.ts';
import { curveSet, type CurveSource } from './curve-set.ts';
import { curveCsv, curveRows } from './curve-table.ts';
import { chartNotes, statesWords } from '../words/kept/curve-words.ts';
import { lookOf, MOST_BESIDE } from './line-look.ts';
import { absent } from '../core/readings/absent.ts';

const style: NumberStyle = { system: 'metric', decimal: '.' };
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

const axis = (key: string) => {
  const found = CURVE_AXES.find((each) => each.key === key);
  if (found === undefined) throw new Error(`no axis ${key}`);
  return nameAxis(found, 'chain');
};

function inState(state: RideStateKey, slot: number | null, setup = sprungSetup): CurveSource {
  const stance = standBike(linkedBike, setup, state);
  const name = slot === null ? 'Now' : rideStateOf(state).label;
  return { name, of: slot === null ? 'now' : 'state', slot, bike: linkedBike, setup, state, stance };
}

const standing = ({ stance }: CurveSource): StandingBike => {
  if (!stance.ok) throw new Error(stance.reason);
  return stance;
};

const now = inState('toppedOut', null);
const states = (['noRider', 'riderUp', 'accelerating', 'braking', 'midCorner'] as const).map((state, slot) =>
  inState(state, slot),
);
const shapesOf = (shapes: readonly { readonly shapes: readonly Shape[] }[]): Shape[] =>
  shapes.flatMap((layer) => layer.shapes);

describe('a ride state over travel', () => {
  const set = curveSet(antiSquat, axis('rearTravel'), [now, ...states]);

  it('has a line through the very place where the bike stands in it, and the figure that it reads there', () => {
    expect(set.curves).toHaveLength(1 + states.length);
    set.curves.slice(1).forEach(({ curve, place, value, under }, i) => {
      const on = standing(states[i]);
      expect(place).toBe(on.travel.rear);
      expect(value).toEqual(expect.any(Number));
      expect(value).toBe(antiSquat.read(on));
      expect(under).toBeNull();
      const at = curve.x.findIndex((x) => Math.abs(x - on.travel.rear) < 1e-6);
      expect(curve.y[at]).toBeCloseTo(value as number, 6);
    });
  });

  it('is not drawn again where its line is the present one, but has its sign on it at its own travel', () => {
    const same = curveSet(motionRatio, axis('bothTravels'), [now, inState('riderUp', 0)]);
    expect(same.curves[1].under).toBe('Now');
    expect(chartNotes(same, CHAIN, style)).toContain('Rider on board: the same line.');
    const { scene, leftPx, rightPx } = chartOf({
      set: same,
      style,
      widthPx: 700,
      heightPx: 300,
      textPx: 12,
      band: null,
      zones: null,
    });
    const { role, sign } = lookOf(same.curves[1]);
    const shapes = shapesOf(scene);
    const pathsOf = (wanted: Shape['role']) =>
      shapes.filter((shape) => shape.kind === 'path' && shape.role === wanted);
    expect(pathsOf(role)).toEqual([]);
    expect(pathsOf(lookOf(same.curves[0]).role).length).toBeGreaterThan(0);
    const signs = shapes.filter((shape): shape is MarkShape => shape.kind === 'mark' && shape.sign === sign);
    const x = leftPx + ((same.curves[1].place ?? 0) / same.to) * (rightPx - leftPx);
    expect(signs.some((each) => Math.abs(each.at.x - x) < 1e-6)).toBe(true);
    const labels = shapes.filter((shape): shape is LabelShape => shape.kind === 'label');
    expect(labels.filter(({ text }) => text === 'Rider on board')).toHaveLength(2);
  });

  it('has a sign without a line where the reading needs an equilibrium', () => {
    const loads = curveSet(frontWheelLoad, axis('rearTravel'), [now, inState('riderUp', 0)]);
    expect([...new Set(loads.curves[1].curve.y)]).toEqual([absent('notCarried')]);
    expect(loads.curves[1].value).toEqual(expect.any(Number));
    expect(loads.curves[1].value).toBe(frontWheelLoad.read(standing(inState('riderUp', 0))));
  });

  it('has its figure and its travel in words, or the reason why it does not settle', () => {
    expect(plain(statesWords(set, style))).toMatch(
      /^Now [\d.]+ % at 0\.0 mm; No rider [\d.]+ % at [\d.]+ mm; .*Each line has the fork where that state puts it\.$/,
    );
    const lifted = inState('accelerating', 0, { ...sprungSetup, acceleration: 3 });
    const one = curveSet(antiSquat, axis('rearTravel'), [now, lifted]);
    expect(plain(chartNotes(one, CHAIN, style)[0])).toMatch(
      /^Accelerating: cannot stand like this\. .*the front wheel lifts/,
    );
    expect(statesWords(one, style)).not.toContain('Accelerating');
  });
});

describe('a ride state over an adjuster', () => {
  it('has a line although it does not settle at the present place', () => {
    const lifted = inState('accelerating', 0, { ...sprungSetup, acceleration: 1.5 });
    expect(lifted.stance.ok).toBe(false);
    const { curves } = curveSet(trail, axis('acceleration'), [
      inState('toppedOut', null, { ...sprungSetup, acceleration: 1.5 }),
      lifted,
    ]);
    expect(curves[1].curve.x.length).toBeGreaterThan(10);
    expect(curves[1].place).toBeNull();
  });

  it('has its own column in the rows and in the file', () => {
    const set = curveSet(antiSquat, axis('shockPreload'), [now, ...states]);
    const [head] = curveCsv(set, style).split('\r\n');
    for (const { state } of states)
      expect(head).toContain(`"Anti-squat, ${rideStateOf(state).label.toLowerCase()} [%]"`);
    const here = curveRows(set).filter((row) => row.here.length > 0);
    expect(here).toHaveLength(1);
    expect(here[0].values).toHaveLength(1 + states.length);
    states.forEach((source, i) =>
      expect(here[0].values[i + 1]).toBeCloseTo(antiSquat.read(standing(source)) as number, 4),
    );
  });
});

describe('the looks of the lines', () => {
  it('differ in dash and sign for as many as may be drawn', () => {
    const looks = [
      ...Array.from({ length: MOST_BESIDE }, (_, slot) => lookOf({ of: 'state', slot })),
      lookOf({ of: 'now', slot: null }),
      lookOf({ of: 'baseline', slot: null }),
    ];
    expect(new Set(looks.map(({ role }) => role)).size).toBe(looks.length);
    expect(new Set(looks.map(({ sign }) => sign)).size).toBe(looks.length);
  });

  it('are named in the legend, in rows that stay within the width', () => {
    const others = RIDE_STATES.filter(({ key }) => key !== 'toppedOut').slice(0, MOST_BESIDE);
    const set = curveSet(antiSquat, axis('rearTravel'), [
      now,
      ...others.map(({ key }, slot) => inState(key, slot)),
    ]);
    for (const widthPx of [320, 640, 1200]) {
      const { entries, rows } = legendOf(set, style, widthPx, 12);
      expect(entries.map(({ name }) => name)).toEqual(set.curves.map(({ name }) => name));
      expect(entries).toHaveLength(1 + others.length);
      expect(Math.max(...entries.map(({ row }) => row))).toBe(rows - 1);
      for (const { wordsPx } of entries) expect(wordsPx).toBeLessThan(widthPx);
      const { scene, topPx } = chartOf({
        set,
        style,
        widthPx,
        heightPx: 300,
        textPx: 12,
        band: null,
        zones: null,
      });
      const words = shapesOf(scene).filter((shape): shape is LabelShape => shape.kind === 'label');
      for (const { name } of set.curves)
        expect(words.some(({ text, at }) => text === name && 300 - at.y < topPx)).toBe(true);
    }
    expect(legendOf(curveSet(antiSquat, axis('rearTravel'), [now]), style, 640, 12).entries).toEqual([]);
  });
});
