/** Main springs that are no straight rate: of two stages, or by a table of force. */
import { curveAt, curveInverse, monotoneCurve, type MonotoneCurve } from '../numeric/monotone-curve.ts';
import { refuse } from '../numeric/refusal.ts';
import type { ForceRow } from '../parts/support.ts';
import type { NoEquilibrium } from '../standing/no-equilibrium.ts';
import type { MainSupport } from '../standing/spring-set.ts';

/** One rate, then another; `count` springs alike. A straight spring changes nowhere. */
export interface StagedSpring {
  readonly kind: 'stages';
  readonly count: number;
  readonly preload: number;
  /** N/mm of one spring, before and after it is pressed by `changeover` mm from its free length. */
  readonly rate: number;
  readonly thenRate: number;
  readonly changeover: number;
}

/** Force against how far the spring is pressed; `count` springs alike. */
export interface TabledSpring {
  readonly kind: 'table';
  readonly count: number;
  readonly preload: number;
  readonly curve: MonotoneCurve;
}

export type CurvedSpring = StagedSpring | TabledSpring;

/** What a main spring makes: its force, and how far it can be pressed by its own measure, mm; infinite when not known. */
export interface MadeSpring {
  readonly ok: true;
  readonly spring: CurvedSpring;
  readonly closesAt: number;
}

/** Force at a stroke, N, positive pushing the end out; none while the spring is loose. */
export function mainForce(spring: CurvedSpring, at: number): number {
  const pressed = spring.preload + at;
  if (!(pressed > 0)) return 0;
  if (spring.kind === 'table') return spring.count * curveAt(spring.curve, pressed).value;
  const { count, rate, thenRate, changeover } = spring;
  const beyond = pressed - changeover;
  return count * (beyond > 0 ? rate * changeover + thenRate * beyond : rate * pressed);
}

/** Rate at a stroke, N/mm: the slope of `mainForce`, at a changeover that of pressing further. */
export function mainRate(spring: CurvedSpring, at: number): number {
  const pressed = spring.preload + at;
  if (pressed < 0) return 0;
  if (spring.kind === 'table') return spring.count * curveAt(spring.curve, pressed).slope;
  const { count, rate, thenRate, changeover } = spring;
  return count * (pressed >= changeover ? thenRate : rate);
}

/** How far the springs have to be pressed to push with `force` N, mm; null where no press gives it. */
export function pressedBy(spring: CurvedSpring, force: number): number | null {
  const each = force / spring.count;
  if (!(each > 0)) return null;
  if (spring.kind === 'table') {
    const pressed = curveInverse(spring.curve, each);
    return Number.isFinite(pressed) ? pressed : null;
  }
  const { rate, thenRate, changeover } = spring;
  const beyond = each - rate * changeover;
  return beyond > 0 ? changeover + beyond / thenRate : each / rate;
}

/**
 * `count` main springs of one leg or shock. Two springs in series share the force, so that they act as k1·k2/(k1 + k2)
 * until the one that closes at the smaller force has closed; then the other acts alone, until it closes too. A changeover
 * that the stroke never reaches, or that preload has already passed, is legal. Refused: rates of zero or less, a stage
 * without length, and a table that does not start at 0/0 or does not rise from row to row. Null for air alone.
 */
export function mainSpring(
  { rate, preload, spring }: MainSupport,
  count: number,
  end: 'front' | 'rear',
): MadeSpring | NoEquilibrium | null {
  const staged = (first: number, thenRate: number, changeover: number, closesAt: number): MadeSpring => ({
    ok: true,
    spring: { kind: 'stages', count, preload, rate: first, thenRate, changeover },
    closesAt,
  });
  switch (spring.kind) {
    case 'none':
      return null;
    case 'oneRate':
      return rate > 0 ? staged(rate, rate, Infinity, Infinity) : noRate(rate, end);
    case 'twoRates': {
      const { secondRate, changeover } = spring;
      const least = Math.min(rate, secondRate);
      if (!(least > 0)) return noRate(least, end);
      if (!(changeover >= 0)) return refuse('stageImpossible', { end, found: changeover, limit: 0 });
      return staged(rate, secondRate, changeover, Infinity);
    }
    case 'inSeries': {
      const { otherRate } = spring;
      const least = Math.min(rate, otherRate);
      if (!(least > 0)) return noRate(least, end);
      const firstCloses = spring.firstCloses ?? Infinity;
      const otherCloses = spring.otherCloses ?? Infinity;
      const shortest = Math.min(firstCloses, otherCloses);
      if (!(shortest > 0)) return refuse('stageImpossible', { end, found: shortest, limit: 0 });
      const together = (rate * otherRate) / (rate + otherRate);
      const firstForce = rate * firstCloses;
      const otherForce = otherRate * otherCloses;
      const thenRate = firstForce <= otherForce ? otherRate : rate;
      const changeover = Math.min(firstForce, otherForce) / together;
      return staged(together, thenRate, changeover, firstCloses + otherCloses);
    }
    case 'table': {
      const curve = forceCurve(spring.rows, end);
      return 'ok' in curve
        ? curve
        : { ok: true, spring: { kind: 'table', count, preload, curve }, closesAt: Infinity };
    }
  }
}

function noRate(found: number, end: 'front' | 'rear'): NoEquilibrium {
  return refuse('rateNotAboveZero', { end, found, limit: 0 });
}

/** The rows as a monotone curve whose ends may be as flat as they lie; or which row, counted from 1, is in the way. */
function forceCurve(rows: readonly ForceRow[], end: 'front' | 'rear'): MonotoneCurve | NoEquilibrium {
  const [first] = rows;
  if (rows.length < 2) return refuse('forceTableTooShort', { end, found: rows.length, limit: 2 });
  if (first.pressed !== 0 || first.force !== 0) return refuse('forceTableNotFromZero', { end, found: 1 });
  const curve = monotoneCurve(
    rows.map(({ pressed, force }) => ({ x: pressed, y: force })),
    0,
  );
  if (curve.ok) return curve.value;
  const falls = rows.findIndex(
    ({ pressed, force }, i) => i > 0 && !(pressed > rows[i - 1].pressed && force > rows[i - 1].force),
  );
  return refuse('forceTableFalls', { end, found: falls + 1 });
}

/** Where a spring of two stages changes over, as a stroke, mm: below zero inside the preload. Null where it never does. */
export function changeoverStroke(spring: CurvedSpring): number | null {
  return spring.kind === 'stages' && Number.isFinite(spring.changeover)
    ? spring.changeover - spring.preload
    : null;
}
