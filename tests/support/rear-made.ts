/** Linkages made for a test, or an error that says why not. */
import { AS_DELIVERED, type RearAdjusters } from '../../src/core/linkage/link-adjustments.ts';
import type { Layout, LinkLayout } from '../../src/core/parts/rear-layout.ts';
import { linkRange, type LinkRange } from '../../src/core/linkage/link-range.ts';
import { links, shockAt, type Links, type ShockAt } from '../../src/core/linkage/links.ts';
import type { NoLinkage } from '../../src/core/linkage/no-linkage.ts';
import {
  suspension,
  suspensionAt,
  type Suspension,
  type SuspensionAt,
} from '../../src/core/linkage/suspension.ts';
import { radians } from '../../src/core/units/convert.ts';
import { ARM_LENGTH } from './rear-layouts.ts';

function given<T extends object>(value: T | NoLinkage): T {
  if ('ok' in value && !value.ok) throw new Error((value as NoLinkage).reason);
  return value as T;
}

export function madeLinks(layout: LinkLayout, change: Partial<RearAdjusters> = {}): Links {
  return given(links(layout, { ...AS_DELIVERED, ...change }));
}

export function madeRange(layout: LinkLayout, change: Partial<RearAdjusters> = {}): LinkRange {
  return given(linkRange(madeLinks(layout, change), radians(layout.framePitchDeg)));
}

export function madeRear(layout: Layout, change: Partial<RearAdjusters> = {}): Suspension {
  return given(suspension(layout, ARM_LENGTH, { ...AS_DELIVERED, ...change }));
}

export function rearAt(of: Suspension, travel: number): SuspensionAt {
  return given(suspensionAt(of, travel));
}

export function madeShock(of: Links, angle: number): ShockAt {
  const at = shockAt(of, angle);
  if (at === null) throw new Error(`The links do not close at ${angle}`);
  return at;
}

/** `count` numbers evenly from low to high, both included. */
export function evenly(low: number, high: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));
}
