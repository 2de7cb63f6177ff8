/** Tests of the rows that the bike on the page is measured by. */
import { describe, expect, it } from 'vitest';
import { metricReading } from '../../core/readings/metric-reading.ts';
import { READINGS } from '../../core/readings/all-readings.ts';
import { standBike } from '../../core/riding/stand-bike.ts';
import { FIRST_DEMO } from '../../document/demos/first-demo.ts';
import { saveDocument } from '../../document/save-document.ts';
import { openDocument } from '../../document/open-document.ts';
import { setAdjuster } from '../../document/edits.ts';
import type { BikeDocument } from '../../document/document.ts';
import type { KeptRow } from '../../document/measure.ts';
import { BikeSession } from '../bike-session.svelte.ts';
import { Papers } from './papers.svelte.ts';
import * as fitter from './tape-fit.ts';
import { newRow } from './tape-rows.ts';
import { Tape } from './tape.svelte.ts';

function taped(document: BikeDocument = FIRST_DEMO): { tape: Tape; session: BikeSession } {
  const session = new BikeSession(document);
  const tape = new Tape({ session });
  tape.fitter = fitter;
  return { tape, session };
}

/** Adds a row along the floor and types its figure. */
function type(tape: Tape, row: Partial<KeptRow> & Pick<KeptRow, 'figure'>): void {
  tape.add('horizontal');
  tape.change(tape.rows.length - 1, row, 'row');
}

const AXLES = { parts: ['rearAxle', 'frontAxle'], unit: 'mm' };

function wheelbase({ bike, setup }: BikeDocument): number {
  const on = standBike(bike, setup, 'noRider');
  const reading = READINGS.find(({ key }) => key === 'wheelbase');
  const value = on.ok && reading !== undefined ? metricReading(reading, on) : 0;
  return typeof value === 'number' ? value : 0;
}

describe('rows on the page', () => {
  it('begin empty, with the parts and the state of their kind, and do not count before a figure is typed', () => {
    const { tape } = taped();
    tape.add('angle');
    expect(tape.rows).toMatchObject([{ kind: 'angle', parts: ['forkLeg'], state: 'onWheels', figure: '' }]);
    expect(tape.open).toBe(0);
    expect(tape.fit?.fates).toEqual([{ kind: 'empty' }]);
    expect(tape.found).toBeNull();
  });

  it('lead to a bike that has what was measured, taken over as one edit that leaves the rows', () => {
    const { tape, session } = taped();
    type(tape, { ...AXLES, figure: '1450' });
    expect(tape.isApplied).toBe(false);
    const before = session.history.present;
    tape.apply('Bike as measured');
    expect(session.history.past.at(-1)?.label).toBe('Bike as measured');
    expect(wheelbase(session.history.present)).toBeCloseTo(1450, 1);
    expect(tape.isApplied).toBe(true);
    session.undo();
    expect(session.history.present).toBe(before);
    expect(tape.rows).toHaveLength(1);
    expect(tape.isApplied).toBe(false);
  });

  it('come back with the bike from its file, and more are added to them', () => {
    const { tape, session } = taped();
    type(tape, { ...AXLES, figure: '57 1/4', unit: 'in', note: 'left' });
    tape.apply('Bike as measured');
    const opened = openDocument(saveDocument(session.history.present));
    if (!opened.ok) throw new Error(opened.reason.sentence);
    const again = taped(opened.value.document).tape;
    expect(again.rows[0]).toMatchObject({ figure: '57 1/4', unit: 'in', note: 'left' });
    expect(again.isApplied).toBe(true);
    expect(again.found?.readings.wheelbase.u).toBeCloseTo(1.5, 2);
    type(again, { ...AXLES, figure: '1454' });
    expect(again.found?.readings.wheelbase.u).toBeCloseTo(1.5 / Math.SQRT2, 2);
  });

  it('of which one is a slip name it, and one press leaves it out', () => {
    const { tape } = taped();
    for (const figure of ['1413', '1414', '1412.5', '1446', '1413.5']) type(tape, { ...AXLES, figure });
    const suspected = (tape.found?.rows ?? []).findIndex((row) => row.suspected?.place === 1);
    expect(tape.found?.status).toBe('disagrees');
    expect(suspected).toBe(3);
    tape.change(3, { off: true }, 'left out');
    expect(tape.found?.status).not.toBe('disagrees');
    expect(tape.fit?.fates[3]).toEqual({ kind: 'off' });
    expect(tape.found?.readings.wheelbase.value).toBeCloseTo(1413.25, 1);
  });

  it('that cannot be are put aside with their reason, and the others count', () => {
    const { tape } = taped();
    type(tape, { ...AXLES, figure: '1420' });
    type(tape, { ...AXLES, figure: '9', unit: 'm' });
    type(tape, { parts: ['rearAxle', 'rearAxle'], figure: '3' });
    expect(tape.fit?.fates.map((fate) => (fate.kind === 'refused' ? fate.why.reason : fate.kind))).toEqual([
      'counted',
      'figureImpossible',
      'partsWrong',
    ]);
    expect(tape.found?.readings.wheelbase.value).toBeCloseTo(1420, 1);
  });

  it('of another program are kept and do not count', () => {
    const row = { ...newRow('horizontal', FIRST_DEMO.bike), kind: 'plumb', figure: '3' };
    const { setup } = FIRST_DEMO;
    const { tape } = taped({ ...FIRST_DEMO, measure: { gaugeZeroed: true, setup, rows: [row] } });
    expect(tape.fit?.fates).toEqual([{ kind: 'unknown' }]);
    tape.add('angle');
    expect(tape.rows[0]).toEqual(row);
  });

  it('stay those of the bike as it was set: turned adjusters are noticed and can be set back', () => {
    const { tape, session } = taped();
    type(tape, { ...AXLES, figure: '1420' });
    tape.apply('Bike as measured');
    const { found } = tape;
    session.commit((from) => setAdjuster(from, 'forkTubes', 11), 'Fork tubes');
    expect(tape.isTurned).toBe(true);
    expect(tape.found).toBe(found);
    tape.setAsMeasured('Set as measured');
    expect(tape.isTurned).toBe(false);
  });

  it('name what would help a reading most, and adding it opens its row', async () => {
    const { tape } = taped();
    type(tape, { ...AXLES, figure: '1420' });
    tape.wanted = 'wheelbase';
    const [first] = await tape.lookAhead();
    const now = tape.found?.readings.wheelbase.u ?? 0;
    expect(first.u).toBeLessThan(now);
    tape.addNext(first);
    expect(tape.rows.at(-1)).toMatchObject({ kind: first.kind, parts: first.parts, figure: '' });
    expect(tape.open).toBe(1);
  });
});

describe('the usual rows', () => {
  it('come at once, each of them once, and the next without a figure follows the one that was typed', () => {
    const { session, tape } = taped();
    type(tape, { ...AXLES, figure: '1420' });
    const missing = tape.usual.length;
    expect(missing).toBeGreaterThan(8);
    tape.addUsual();
    expect(tape.rows).toHaveLength(1 + missing);
    expect(tape.usual).toEqual([]);
    expect(tape.open).toBe(1);
    tape.change(1, { figure: '300' }, 'figure');
    tape.typeNext(1);
    expect(tape.open).toBe(2);
    tape.typeNext(missing);
    expect(tape.open).toBe(2);
    session.undo();
    session.undo();
    expect(tape.rows).toHaveLength(1);
  });
});

describe('a bike from its papers', () => {
  const names = { name: 'Customer bike', about: 'From its papers' };
  const full = (): Papers => {
    const papers = new Papers();
    papers.fill(0, { figure: '24,5', unit: '°' });
    papers.fill(1, { figure: '98', unit: 'mm' });
    papers.fill(2, { figure: '1420', unit: 'mm' });
    papers.fill(3, { figure: '120/70-17', unit: '' });
    papers.fill(6, { figure: '43', unit: '' });
    return papers;
  };

  it('keeps its rows, is called as it was named, and is the bike that they make', () => {
    const made = full().make(fitter, names);
    if (!made.ok) throw new Error(JSON.stringify(made.reason));
    const { bike, setup, baseline, measure } = made.value;
    expect(bike).toMatchObject({ ...names, invented: false });
    expect(setup).toMatchObject({ rearTeeth: 43, frontTyre: { code: '120/70-17' } });
    expect(baseline.bike).toBe(bike);
    expect(measure?.rows.map(({ figure }) => figure)).toEqual(['24,5', '98', '1420', '120/70-17', '43']);
    const { tape } = taped(made.value);
    expect(tape.isApplied).toBe(true);
    expect(tape.found?.readings.trail.value).toBeCloseTo(98, 1);
    expect(2 * (tape.found?.readings.rake.u ?? 0)).toBeCloseTo(0.5, 1);
    expect(tape.found?.readings.swingarmAngle.fixed).toBe(false);
  });

  it('measured on its wheels keeps the papers apart, until they are read as the bike stands', () => {
    const made = full().make(fitter, names);
    if (!made.ok) throw new Error(JSON.stringify(made.reason));
    const { tape } = taped(made.value);
    expect(tape.papersApart).toBe(false);
    type(tape, { ...AXLES, figure: '1418' });
    expect(tape.papersApart).toBe(true);
    expect(tape.found?.readings.rake.fixed).toBe(false);
    tape.readPapersAsItStands();
    expect(tape.papersApart).toBe(false);
    expect(tape.found?.readings.rake.fixed).toBe(true);
    expect(tape.found?.readings.trail.fixed).toBe(true);
  });

  it('is refused with the figure to blame, and nothing typed is lost', () => {
    const papers = full();
    papers.fill(2, { figure: '14', unit: 'm' });
    expect(papers.make(fitter, names)).toMatchObject({
      ok: false,
      reason: { label: 'Wheelbase', why: { reason: 'figureImpossible' } },
    });
    expect(papers.count).toBe(5);
  });

  it('without a figure is none', () => {
    expect(new Papers().make(fitter, names)).toEqual({
      ok: false,
      reason: { sentence: 'Type at least one figure.' },
    });
  });
});

it('a bike measured hanging too, whose springs let it sag otherwise, is applied at once and stays', () => {
  const { tape } = taped();
  for (const [kind, parts, state, figure] of [
    ['horizontal', ['rearAxle', 'frontAxle'], 'onWheels', '1415'],
    ['angle', ['forkLeg'], 'onWheels', '23.7'],
    ['axleHeight', ['frontWheel'], 'onWheels', '301'],
    ['axleHeight', ['rearWheel'], 'onWheels', '312'],
    ['distance', ['rearAxle', 'pivot'], 'onWheels', '575'],
    ['height', ['pivot'], 'onWheels', '394'],
    ['angle', ['swingarm'], 'bothHanging', '13'],
    ['angle', ['forkLeg'], 'bothHanging', '24.6'],
    ['axleHeight', ['frontWheel'], 'bothHanging', '380'],
    ['axleHeight', ['rearWheel'], 'bothHanging', '390'],
    ['height', ['pivot'], 'bothHanging', '520'],
    ['exposedTube', [], 'onWheels', '90'],
    ['exposedTube', [], 'bothHanging', '130'],
  ] as const) {
    tape.add(kind);
    tape.change(tape.rows.length - 1, { parts, state, figure }, 'row');
  }
  tape.apply('Bike as measured');
  expect(tape.isApplied).toBe(true);
  const { found } = tape;
  expect(found?.setup.frontTravelUsed).toBeGreaterThan(35);
});
