/** Tests of moving all bolts of a layout by one rule. */
import { expect, it } from 'vitest';
import { rearLayouts } from '../../../tests/support/rear-layouts.ts';
import { radians } from '../units/convert.ts';
import { armPointInFrame, drawnPoints, framePointOnArm } from './link-drawing.ts';
import { mapBolts } from './map-bolts.ts';

it.each(rearLayouts)('puts every bolt of $name elsewhere by the rule, and nothing else', ({ layout }) => {
  const angle = radians(layout.drawnAngleDeg);
  const moved = ({ x, y }: { x: number; y: number }) => ({ x: 2 * x - y, y: 3 * y + x });
  const mapped = mapBolts(layout, {
    onFrame: moved,
    onArm: (p) => framePointOnArm(moved(armPointInFrame(p, angle)), angle),
  });
  const before = drawnPoints(layout, angle);
  const after = drawnPoints(mapped, angle);
  expect(after.map(({ key, part }) => [key, part])).toEqual(before.map(({ key, part }) => [key, part]));
  after.forEach(({ place }, i) => {
    const wanted = moved(before[i].place);
    expect(place.x).toBeCloseTo(wanted.x, 9);
    expect(place.y).toBeCloseTo(wanted.y, 9);
  });
  expect([mapped.drawnAngleDeg, mapped.framePitchDeg, mapped.shock]).toEqual([
    layout.drawnAngleDeg,
    layout.framePitchDeg,
    layout.shock,
  ]);
});
