/** The geometry laid over the bike: chain and swingarm lines, squat and load-transfer lines, axis and trail. */
import { onGround } from '../../core/chassis/pose.ts';
import type { Construction } from '../../core/readings/reading.ts';
import { groundTrail } from '../../core/readings/trail.ts';
import type { Point } from '../../core/plane/point.ts';
import { throttleIsClosed } from '../../core/riding/throttle-closed.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { carriedOn, pen, segment } from '../shapes/outline.ts';
import { brakeLineShapes, engineBrakingShapes } from './braking-lines.ts';
import type { Shape } from '../shapes/shape.ts';
import { squatConstruction } from './squat-construction.ts';
import {
  clampGapShapes,
  forkTopShapes,
  forkTravelShapes,
  rearTravelShapes,
  wheelLoadShapes,
} from './suspension-lines.ts';
import { zonesEnd } from './zones.ts';

/** How far the wheelbase line lies under the ground and the axis runs on above the head, mm. */
const WHEELBASE_DROP = 125;
const AXIS_ABOVE = 190;
/** An instant centre further away than this many wheelbases is shown as a direction only. */
const FARTHEST_CENTRE = 3;

/** Rake under which the trail triangle has no height that could be drawn, radians. */
const LEAST_RAKE = 0.02;

/** Places of the trail triangle, ground frame. */
export interface TrailPlaces {
  /** Where the steering axis meets the ground. */
  readonly axisGround: Point;
  readonly patch: Point;
  /** The foot of the normal trail on the axis. */
  readonly normalFoot: Point;
  /** Where the axis crosses the upright through the patch: the triangle's top, where the angle is the rake. */
  readonly top: Point;
  readonly head: Point;
}

export function trailPlaces(standing: Stance): TrailPlaces {
  const { rake, offset, machine, pose } = standing;
  const trail = groundTrail(machine.frontRadius, rake, offset);
  const axisGround = { x: pose.wheelbase + trail, y: 0 };
  const normal = trail * Math.cos(rake);
  return {
    axisGround,
    patch: { x: pose.wheelbase, y: 0 },
    // An axis that stands upright never crosses the upright; the triangle is then a line.
    top: { x: pose.wheelbase, y: Math.abs(rake) > LEAST_RAKE ? trail / Math.tan(rake) : 0 },
    normalFoot: { x: pose.wheelbase + normal * Math.cos(rake), y: normal * Math.sin(rake) },
    head: onGround(standing.pose, machine.front.head),
  };
}

export function wheelbaseHeight(): number {
  return -WHEELBASE_DROP;
}

/** Whether an instant centre is near enough to be drawn. */
export function instantCentreShown(standing: Stance): Point | null {
  const { instantCentre } = squatConstruction(standing);
  if (instantCentre === 'parallel') return null;
  const reach = FARTHEST_CENTRE * standing.pose.wheelbase;
  return Math.hypot(instantCentre.x, instantCentre.y) < reach ? instantCentre : null;
}

/** The shapes of one construction. */
export function constructionShapes(standing: StandingBike, which: Construction): Shape[] {
  const { pose } = standing;
  switch (which) {
    case 'chainRuns': {
      const { chain } = squatConstruction(standing);
      if (chain === null) return [];
      const centre = instantCentreShown(standing);
      return [carriedOn('chainLine', chain.from, chain.to, (centre?.x ?? pose.wheelbase) + 40)];
    }
    case 'swingarmLine': {
      const { swingarm } = squatConstruction(standing);
      const centre = instantCentreShown(standing);
      return [carriedOn('swingarmLine', swingarm.from, swingarm.to, (centre?.x ?? pose.wheelbase) + 40)];
    }
    case 'squatLine': {
      const { squatSlope } = squatConstruction(standing);
      const end = zonesEnd(standing);
      const centre = instantCentreShown(standing);
      const line = segment('squatLine', { x: 0, y: 0 }, { x: end, y: squatSlope * end });
      if (centre === null) return [line];
      return [line, { kind: 'mark', role: 'instantCentre', at: centre, sign: 'ring', radiusPx: 6 }];
    }
    case 'loadTransferLine': {
      const { loadPoint } = squatConstruction(standing);
      if (loadPoint === null) return [];
      const end = zonesEnd(standing);
      return [
        segment('loadTransferLine', { x: 0, y: 0 }, { x: end, y: (loadPoint.y / loadPoint.x) * end }),
        segment('heightLine', { x: pose.wheelbase, y: 0 }, loadPoint),
        { kind: 'mark', role: 'loadTransferLine', at: loadPoint, sign: 'diamond', radiusPx: 6 },
      ];
    }
    case 'steeringAxis': {
      const { axisGround, head } = trailPlaces(standing);
      const lean = standing.rake;
      const above = { x: head.x - AXIS_ABOVE * Math.sin(lean), y: head.y + AXIS_ABOVE * Math.cos(lean) };
      return [segment('steeringAxis', above, axisGround)];
    }
    case 'trailTriangle': {
      const { axisGround, patch, normalFoot, top } = trailPlaces(standing);
      return [
        pen()
          .move(axisGround.x, axisGround.y)
          .line(patch.x, patch.y, top.x, top.y)
          .close()
          .shape('trailTriangle'),
        segment('heightLine', patch, standing.frontAxle),
        segment('heightLine', patch, normalFoot),
        segment('trailLine', patch, axisGround),
      ];
    }
    case 'wheelbase': {
      const y = -WHEELBASE_DROP;
      return [
        segment('wheelbaseLine', { x: 0, y }, { x: pose.wheelbase, y }, { arrows: 'both' }),
        segment('heightLine', { x: 0, y: 0 }, { x: 0, y: y - 20 }),
        segment('heightLine', { x: pose.wheelbase, y: 0 }, { x: pose.wheelbase, y: y - 20 }),
      ];
    }
    case 'centreOfGravity':
      if (!(standing.mass > 0)) return [];
      return [
        {
          kind: 'mark',
          role: 'centreOfGravity',
          at: standing.centre,
          sign: 'quartered',
          radiusPx: 9,
        },
        segment('heightLine', standing.centre, { x: pose.wheelbase, y: standing.centre.y }),
      ];
    case 'heights': {
      const { machine } = standing;
      const places = [
        standing.pose.pivot,
        onGround(standing.pose, machine.places.seat),
        standing.countershaft,
        standing.rearAxle,
        standing.frontAxle,
      ];
      return places.map((p) => segment('heightLine', { x: p.x, y: 0 }, p, { arrows: 'end' }));
    }
    case 'clearance':
      return standing.machine.touching
        .map(({ at }) => onGround(pose, at))
        .map((p) => segment('heightLine', { x: p.x, y: 0 }, p, { arrows: 'both' }));
    case 'engineBrakingLine':
      return engineBrakingShapes(standing);
    case 'brakeLine':
      return brakeLineShapes(standing);
    case 'forkTravel':
      return forkTravelShapes(standing);
    case 'forkTop':
      return forkTopShapes(standing);
    case 'rearTravel':
      return rearTravelShapes(standing);
    case 'clampGap':
      return clampGapShapes(standing);
    case 'wheelLoads':
      return wheelLoadShapes(standing);
  }
}

/** The constructions that are always drawn, from back to front. */
const ON_THE_GAS: readonly Construction[] = [
  'wheelbase',
  'steeringAxis',
  'trailTriangle',
  'swingarmLine',
  'chainRuns',
  'loadTransferLine',
  'squatLine',
  'centreOfGravity',
];

const THROTTLE_CLOSED: readonly Construction[] = ON_THE_GAS.map((each) =>
  each === 'squatLine' ? 'engineBrakingLine' : each,
);

/** The constructions that are always drawn of a standing bike: with the throttle closed the engine's line, not the squat line. */
export function standingConstructions(on: StandingBike): readonly Construction[] {
  return throttleIsClosed(on) ? THROTTLE_CLOSED : ON_THE_GAS;
}

/** Drawn only while chosen, each in its ink and dash, which a broad line under it would hide. */
const SEEN_BY_THEMSELVES: readonly Construction[] = [
  'engineBrakingLine',
  'brakeLine',
  'forkTravel',
  'forkTop',
  'rearTravel',
  'clampGap',
  'wheelLoads',
];

/** A construction drawn once more, broad, to be seen under its own lines; nothing when it is plain to see without. */
export function highlightShapes(standing: StandingBike, which: Construction): Shape[] {
  if (SEEN_BY_THEMSELVES.includes(which)) return [];
  return constructionShapes(standing, which)
    .filter((shape) => shape.kind === 'path')
    .map((shape) => ({ ...shape, role: 'highlight' as const }));
}
