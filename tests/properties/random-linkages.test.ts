/** What must hold of any rear linkage whatever: a reason or an answer, one branch, and both ways the same. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../support/cases.ts';
import { angleAtLength } from '../../src/core/linkage/arm-from-shock.ts';
import { linkRange, type LinkEnd } from '../../src/core/linkage/link-range.ts';
import { linkPoints } from '../../src/core/linkage/link-points.ts';
import { shockAt } from '../../src/core/linkage/links.ts';
import { suspension, suspensionAt, type LinkSuspension } from '../../src/core/linkage/suspension.ts';
import type { Point } from '../../src/core/plane/point.ts';
import { randomLinkage } from '../support/random-layouts.ts';
import { ARM_LENGTH } from '../support/rear-layouts.ts';
import { evenly } from '../support/rear-made.ts';

const LINKAGES = cases(10_000);
const PLACES = 16;
/** A rocker that turns by more than this between two angles of the arm is looked at in between, radians. */
const LARGE_TURN = 0.15;
/** Between angles of the arm this close together no rocker turns that far without a jump, radians. */
const NEXT_TO = 1e-9;
/** Sine within which a dead point's parts lie in line. */
const IN_LINE = 1e-5;
/** Both ways between arm angle and shock length agree to this, mm and radians. */
const AGREED = 1e-9;
/** Where the shock moves less than this, mm per radian, its length tells little of the angle. */
const LEAST_LEVER = 1;

/** Where the rocker's rod bolt lies from its pivot, radians; null where the links do not close. */
function rockerDirection(of: LinkSuspension, angle: number): number | null {
  const points = linkPoints(of.links, angle);
  const at = (key: string) => points?.find((point) => point.key === key)?.place;
  const [pivot, bolt] = [at('rockerPivot'), at('rodOnRocker')];
  return pivot === undefined || bolt === undefined ? null : Math.atan2(bolt.y - pivot.y, bolt.x - pivot.x);
}

function jumps(of: LinkSuspension, from: number, to: number): boolean {
  const a = rockerDirection(of, from);
  const b = rockerDirection(of, to);
  if (a === null || b === null) return true;
  const turn = b - a - 2 * Math.PI * Math.round((b - a) / (2 * Math.PI));
  if (Math.abs(turn) <= LARGE_TURN) return false;
  if (Math.abs(to - from) < NEXT_TO) return true;
  const middle = (from + to) / 2;
  return jumps(of, from, middle) || jumps(of, middle, to);
}

/** Sine of the angle between two directions. */
function sine(a: Point, b: Point): number {
  return Math.abs(a.x * b.y - a.y * b.x) / (Math.hypot(a.x, a.y) * Math.hypot(b.x, b.y));
}

/** Whether what is said to lie in line at an end of the way does. */
function inLine(of: LinkSuspension, end: LinkEnd): boolean {
  const points = linkPoints(of.links, end.angle);
  if (points === null) return false;
  const at = (name: string): Point =>
    points.find(({ key }) => key.startsWith(name))?.place ?? { x: NaN, y: NaN };
  const from = (a: Point, b: Point): Point => ({ x: b.x - a.x, y: b.y - a.y });
  const rodEnd = points.find(({ key }) => key === 'rodOnArm' || key === 'rodOnFrame')?.place ?? at('none');
  switch (end.why) {
    case 'beyondStroke':
      return false;
    case 'armUpright':
      return Math.abs(Math.sin(end.angle + of.framePitch)) > 0.998;
    case 'shockThroughPivot':
      return sine(at('shockOnFrame'), at('shockOnArm')) < IN_LINE;
    case 'rodAndRockerInLine':
      return sine(from(at('rockerPivot'), at('rodOnRocker')), from(at('rodOnRocker'), rodEnd)) < 0.03;
    case 'rodThroughPivot':
      return sine(rodEnd, at('rodOnRocker')) < IN_LINE;
    case 'shockThroughRocker':
      return (
        sine(from(at('rockerPivot'), at('shockOn')), from(at('rockerPivot'), at('shockFarEnd'))) < IN_LINE
      );
    case 'shockEndsMoveAlike':
      return Math.abs(shockAt(of.links, end.angle)?.slope ?? NaN) < 1e-3;
  }
}

describe('random linkages', () => {
  it('each give a reason or an answer without a break, in one branch, the same both ways', () => {
    const counts: Record<string, number> = {};
    const count = (name: string) => (counts[name] = (counts[name] ?? 0) + 1);
    fc.assert(
      fc.property(randomLinkage, ({ layout, adjusters }) => {
        const faults: string[] = [];
        const of = suspension(layout, ARM_LENGTH, adjusters);
        if (!of.ok) {
          count(of.reason);
          for (const number of [of.found, of.limit])
            if (number !== undefined && !Number.isFinite(number)) faults.push(`${of.reason}: ${number}`);
          expect(faults).toEqual([]);
          return;
        }
        if (of.kind !== 'links') throw new Error('A table came of links');
        count(`stands, ended by ${of.endsBy}`);
        const whole = linkRange(of.links, of.framePitch);
        if (!whole.ok) throw new Error(whole.reason);
        for (const end of [whole.low, whole.high]) {
          count(end.why);
          if (!inLine(of, end)) faults.push(`not so: ${end.why}`);
        }
        let before: number | null = null;
        for (const travel of evenly(0, of.wheelTravel, PLACES)) {
          const at = suspensionAt(of, travel);
          if (!at.ok) {
            faults.push(`${at.reason} at ${travel} of ${of.wheelTravel}`);
            break;
          }
          for (const value of Object.values(at))
            if (typeof value === 'number' && !Number.isFinite(value)) faults.push('a value is not a number');
          if (at.lever < -1e-6) faults.push(`pulled by ${at.lever}`);
          if (before !== null && layout.kind !== 'direct' && jumps(of, before, at.angle))
            faults.push('a jump');
          before = at.angle;
          const length = shockAt(of.links, at.angle)?.length ?? NaN;
          if (at.angle < of.range.low.angle || at.angle > of.range.high.angle) continue;
          const back = angleAtLength(of.links, of.range, length);
          if (!back.ok) faults.push(`no way back: ${back.reason}`);
          else {
            count(back.how);
            if (Math.abs(back.residual) > AGREED) faults.push(`length off by ${back.residual}`);
            if (at.lever > LEAST_LEVER && Math.abs(back.angle - at.angle) > AGREED)
              faults.push(`angle off by ${back.angle - at.angle} (${back.how}, lever ${at.lever})`);
          }
        }
        expect(faults).toEqual([]);
      }),
      { numRuns: LINKAGES },
    );
    // Every outcome that a drawing can have was among them, so that none of this is empty.
    for (const outcome of [
      'stands, ended by shockClosed',
      'shockPulled',
      'shockTooLong',
      'closedForm',
      'bracketed',
      'armUpright',
      'rodAndRockerInLine',
      'rodThroughPivot',
      'shockThroughRocker',
      'shockThroughPivot',
      'shockEndsMoveAlike',
    ])
      expect(counts[outcome]).toBeGreaterThan(cases(50));
  });
});
