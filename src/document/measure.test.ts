/** Tests of the rows that are kept with a bike. */
import { describe, expect, it } from 'vitest';
import plain from '../../fixtures/bikes/plain.json';
import type { BikeDocument } from './document.ts';
import { setAdjuster } from './edits.ts';
import { setMeasure } from './set-measure.ts';
import { beginHistory, commit, undo } from './history.ts';
import { openDocument } from './open-document.ts';
import { openJson } from './open-json.ts';
import { saveDocument } from './save-document.ts';
import type { Json } from './json/json.ts';
import { MOST_ROWS, type KeptMeasure, type KeptRow } from './measure.ts';

function start(): BikeDocument {
  const opened = openJson(plain);
  if (!opened.ok) throw new Error(opened.reason.sentence);
  return opened.value.document;
}

const row: KeptRow = {
  kind: 'distance',
  parts: ['rearAxle', 'pivot'],
  state: 'onWheels',
  otherState: null,
  figure: '22 5/8',
  unit: 'in',
  sd: 0.5,
  outOfPlane: 40,
  fromOther: false,
  off: false,
  note: 'left side',
};

function withRows(rows: readonly KeptRow[]): BikeDocument {
  const document = start();
  const edited = setMeasure(document, { gaugeZeroed: true, setup: document.setup, rows });
  if (!edited.ok) throw new Error(edited.reason.sentence);
  return edited.value;
}

function openedWith(measure: Json) {
  const opened = openJson({ ...(plain as unknown as Record<string, Json>), measure });
  if (!opened.ok) throw new Error(opened.reason.sentence);
  return opened.value;
}

describe('rows kept with a bike', () => {
  it('come back from the file as they were typed', () => {
    const document = withRows([row, { ...row, figure: '', unit: '', sd: null, off: true }]);
    const opened = openDocument(saveDocument(document));
    expect(opened).toEqual({ ok: true, value: { document, repairs: [] } });
  });

  it('keep the setup they were measured in while the adjusters are turned', () => {
    const before = withRows([row]);
    const turned = setAdjuster(before, 'forkTubes', 12);
    if (!turned.ok) throw new Error(turned.reason.sentence);
    expect(turned.value.measure?.setup.forkTubes).toBe(before.setup.forkTubes);
    expect(turned.value.setup.forkTubes).toBe(12);
  });

  it('are left out of the file of a bike that nobody measured', () => {
    expect(saveDocument(start())).not.toContain('measure"');
    const taken = setMeasure(withRows([row]), null);
    expect(taken).toEqual({ ok: true, value: start() });
  });

  it('are one step of the history, which can be taken back', () => {
    const document = start();
    const measured = commit(beginHistory(document), withRows([row]), 'Row');
    expect(undo(measured).present).toBe(document);
    expect(commit(measured, withRows([row]), 'The same row')).toBe(measured);
  });

  it('of a kind that this program does not know are kept', () => {
    const { document, repairs } = openedWith({ rows: [{ kind: 'plumb', state: 'hung', figure: '3' }] });
    expect(repairs).toEqual([]);
    expect(document.measure?.rows[0]).toMatchObject({ kind: 'plumb', parts: [], sd: null, note: '' });
    expect(document.measure?.setup).toBe(document.setup);
  });
});

describe('a damaged sheet', () => {
  it('loses the rows that cannot be read, and says how many', () => {
    const { document, repairs } = openedWith({
      rows: [row, { ...row, sd: -1 }, 'x', { ...row, figure: 3 }] as unknown as Json,
    });
    expect(document.measure?.rows).toEqual([row]);
    expect(repairs.map(({ sentence }) => sentence)).toEqual([
      '3 of 4 measured rows cannot be used and were left out.',
    ]);
  });

  it.each([
    [7, 'measure'],
    [{ rows: 'x' }, 'measure.rows'],
    [{ rows: [], setup: { frontTeeth: 'x' } }, 'measure.setup'],
    [{ rows: [], tape: 1 }, 'measure.tape'],
    [{ rows: [], photos: 'x' }, 'measure.photos'],
    [{ rows: [], photos: ['x', {}] }, 'measure.photos'],
  ] as [Json, string][])('%j is said and the bike opens', (measure, path) => {
    expect(openedWith(measure).repairs.map((each) => each.path)).toEqual([path]);
  });

  it('of far too many rows keeps as many as a sheet can hold', () => {
    const rows = Array.from({ length: MOST_ROWS + 1 }, () => row);
    expect(openedWith({ rows } as unknown as Json).document.measure?.rows).toHaveLength(MOST_ROWS);
  });

  it('is refused by an edit, which leaves the document as it was', () => {
    const document = start();
    const wrong: KeptMeasure = { gaugeZeroed: true, setup: document.setup, rows: [{ ...row, sd: 0 }] };
    expect(setMeasure(document, wrong)).toMatchObject({ ok: false, reason: { path: 'measure.rows' } });
  });
});
