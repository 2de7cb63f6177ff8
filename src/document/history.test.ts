/** Tests of undo and redo. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import '../../tests/support/cases.ts';
import plain from '../../fixtures/bikes/plain.json';
import type { BikeDocument } from './document.ts';
import { beginHistory, commit, redo, redoLabel, undo, undoLabel } from './history.ts';
import { openJson } from './open-json.ts';

function start(): BikeDocument {
  const opened = openJson(plain);
  if (!opened.ok) throw new Error(opened.reason.sentence);
  return opened.value.document;
}

const withFork = (document: BikeDocument, forkTubes: number): BikeDocument => ({
  ...document,
  setup: { ...document.setup, forkTubes },
});

it('undo gives back the very document that was left, and redo the one that was made', () => {
  const first = start();
  const second = withFork(first, 5);
  const history = commit(beginHistory(first), second, 'Fork tubes above clamp [yoke]');
  const undone = undo(history);
  expect(undone.present).toBe(first);
  expect(redo(undone).present).toBe(second);
});

it('a change that changes nothing leaves no step and keeps what can be redone', () => {
  const first = start();
  const undone = undo(commit(beginHistory(first), withFork(first, 5), 'Fork tubes above clamp [yoke]'));
  const same = commit(undone, { ...first, setup: { ...first.setup } }, 'Moved swingarm pivot');
  expect(same).toBe(undone);
  expect(redoLabel(same)).toBe('Fork tubes above clamp [yoke]');
});

it('a new change takes away what could be redone', () => {
  const first = start();
  const undone = undo(commit(beginHistory(first), withFork(first, 5), 'Fork tubes above clamp [yoke]'));
  const changed = commit(undone, withFork(first, 7), 'Fork tubes above clamp [yoke]');
  expect(changed.future).toEqual([]);
  expect(redo(changed)).toBe(changed);
});

it('says what undo would take back and what redo would do again', () => {
  const first = start();
  let history = commit(beginHistory(first), withFork(first, 5), 'Fork tubes above clamp [yoke]');
  history = commit(history, withFork(first, 6), 'Fork slid');
  expect([undoLabel(history), redoLabel(history)]).toEqual(['Fork slid', null]);
  history = undo(history);
  expect([undoLabel(history), redoLabel(history)]).toEqual(['Fork tubes above clamp [yoke]', 'Fork slid']);
});

it('with nothing to undo or redo stays the same history', () => {
  const history = beginHistory(start());
  expect(undo(history)).toBe(history);
  expect(redo(history)).toBe(history);
  expect(undoLabel(history)).toBeNull();
});

it('as many undos as there were changes, in any order with redos, lead back to the first document', () => {
  const first = start();
  fc.assert(
    fc.property(
      fc.array(fc.oneof(fc.integer({ min: -20, max: 40 }), fc.constant('undo'), fc.constant('redo'))),
      (acts) => {
        let history = beginHistory(first);
        for (const act of acts) {
          if (act === 'undo') history = undo(history);
          else if (act === 'redo') history = redo(history);
          else
            history = commit(
              history,
              withFork(history.present, Number(act)),
              'Fork tubes above clamp [yoke]',
            );
        }
        const last = history.present;
        const steps = history.past.length;
        for (let i = 0; i < steps; i++) history = undo(history);
        expect(history.present).toBe(first);
        for (let i = 0; i < steps; i++) history = redo(history);
        expect(history.present).toBe(last);
      },
    ),
  );
});

it('has no limit: ten thousand changes can all be undone', () => {
  const first = start();
  let history = beginHistory(first);
  for (let i = 1; i <= 10_000; i++)
    history = commit(history, withFork(first, i), 'Fork tubes above clamp [yoke]');
  for (let i = 1; i <= 10_000; i++) history = undo(history);
  expect(history.present).toBe(first);
});
