/** Random link layouts: many like those of motorcycles, many like nothing on wheels. */
import fc from 'fast-check';
import type { RearAdjusters } from '../../src/core/linkage/link-adjustments.ts';
import type { ArmPoint, LinkLayout, ShockFarEnd } from '../../src/core/parts/rear-layout.ts';
import { rearLayouts } from './rear-layouts.ts';

export interface RandomLinkage {
  readonly layout: LinkLayout;
  readonly adjusters: RearAdjusters;
}

/** Parts of one, every one as likely as another. */
const parts = fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 20, maxLength: 20 });

/** Draws numbers from a list in turn. */
function drawing(list: readonly number[]): (low: number, high: number) => number {
  let at = 0;
  return (low, high) => low + ((high - low) * list[at++]) / 1_000_000;
}

type Drawn = (low: number, high: number) => number;

const framePoint = (draw: Drawn) => ({ x: draw(-400, 150), y: draw(-250, 350) });
const armPoint = (draw: Drawn): ArmPoint => ({ along: draw(-100, 500), above: draw(-200, 250) });

function anywhere(draw: Drawn): LinkLayout {
  const shockLong = draw(80, 450);
  const posture = {
    drawnAngleDeg: draw(-30, 40),
    framePitchDeg: draw(-5, 5),
    shock: { fullLength: shockLong, closedLength: shockLong - draw(-5, 120) },
  };
  const kind = draw(0, 3);
  const far: ShockFarEnd =
    draw(0, 1) < 0.5 ? { on: 'frame', at: framePoint(draw) } : { on: 'arm', at: armPoint(draw) };
  if (kind < 1)
    return {
      kind: 'direct',
      ...posture,
      shockOnFrame: framePoint(draw),
      shockOnArm: armPoint(draw),
    };
  if (kind < 2)
    return {
      kind: 'rockerOnFrame',
      ...posture,
      rockerPivot: framePoint(draw),
      rodOnRocker: framePoint(draw),
      shockOnRocker: framePoint(draw),
      rodOnArm: armPoint(draw),
      shockFarEnd: far,
    };
  return {
    kind: 'rockerOnArm',
    ...posture,
    rockerPivot: armPoint(draw),
    rodOnRocker: armPoint(draw),
    shockOnRocker: armPoint(draw),
    rodOnFrame: framePoint(draw),
    shockFarEnd: far,
  };
}

/** One of the made-up suspensions with every mount moved. */
function nearAMotorcycle(draw: Drawn): LinkLayout {
  const { layout } = rearLayouts[Math.min(Math.floor(draw(0, rearLayouts.length)), rearLayouts.length - 1)];
  const by = (value: number) => value + draw(-40, 40);
  const frame = (p: { x: number; y: number }) => ({ x: by(p.x), y: by(p.y) });
  const arm = (p: ArmPoint): ArmPoint => ({ along: by(p.along), above: by(p.above) });
  if (layout.kind === 'direct')
    return { ...layout, shockOnFrame: frame(layout.shockOnFrame), shockOnArm: arm(layout.shockOnArm) };
  const { shockFarEnd: far } = layout;
  const shockFarEnd: ShockFarEnd =
    far.on === 'frame' ? { on: 'frame', at: frame(far.at) } : { on: 'arm', at: arm(far.at) };
  return layout.kind === 'rockerOnFrame'
    ? {
        ...layout,
        rockerPivot: frame(layout.rockerPivot),
        rodOnRocker: frame(layout.rodOnRocker),
        shockOnRocker: frame(layout.shockOnRocker),
        rodOnArm: arm(layout.rodOnArm),
        shockFarEnd,
      }
    : {
        ...layout,
        rockerPivot: arm(layout.rockerPivot),
        rodOnRocker: arm(layout.rodOnRocker),
        shockOnRocker: arm(layout.shockOnRocker),
        rodOnFrame: frame(layout.rodOnFrame),
        shockFarEnd,
      };
}

/** Half of them near a motorcycle's; every other one with its adjusters turned. */
export const randomLinkage: fc.Arbitrary<RandomLinkage> = parts.map((list) => {
  const draw = drawing(list);
  const layout = draw(0, 1) < 0.5 ? anywhere(draw) : nearAMotorcycle(draw);
  const turned = drawing([...list].reverse());
  const still = turned(0, 1) < 0.5;
  const by = (most: number) => (still ? 0 : turned(-most, most));
  return {
    layout,
    adjusters: {
      shockLength: by(8),
      shockMountShim: by(5),
      linkLength: layout.kind === 'direct' ? 0 : by(6),
      pivotForward: by(4),
      pivotUp: by(4),
      axlePosition: still ? 0 : turned(0, 30),
    },
  };
});
