/** One measurement on a bike as a small drawing: the bike in faint ink, and where tape, gauge or scale is held. */
import type { Bike } from '../core/parts/bike.ts';
import type { Setup } from '../core/adjusters/setup.ts';
import { onGround } from '../core/chassis/pose.ts';
import { distance, type Point } from '../core/plane/point.ts';
import type { Stance } from '../core/standing/stance.ts';
import { bikeShapes } from './bike/bike-drawing.ts';
import { groundShapes } from './ground-drawing.ts';
import { placeLabels, type WantedLabel } from './shapes/label-placing.ts';
import { pen, segment } from './shapes/outline.ts';
import type { Scene, Shape } from './shapes/shape.ts';
import { fitView, type Extent, type View } from './shapes/view.ts';

/** Where a tool is held. `along` is how the tape runs; `against` is the line from which the gauge counts. */
export type Hold =
  | {
      readonly tool: 'tape';
      readonly from: Point;
      readonly to: Point;
      readonly along: 'straight' | 'level' | 'upright';
    }
  | {
      readonly tool: 'gauge';
      readonly from: Point;
      readonly to: Point;
      readonly against: 'level' | 'upright';
    }
  | { readonly tool: 'round'; readonly centre: Point; readonly radius: number }
  | { readonly tool: 'scale'; readonly under: readonly Point[] }
  | { readonly tool: 'eye'; readonly at: readonly Point[] };

export interface HoldShown {
  readonly stance: Stance;
  readonly bike: Bike;
  readonly setup: Setup;
  readonly hold: Hold;
  /** What is measured, in a word or two. */
  readonly words: string;
}

export interface HoldWindow {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly sizePx: number;
}

/** Ink of the bike behind the measurement. */
const FAINT = 0.4;
/** Room round the bike, mm. */
const AROUND = 120;
const ABOVE_HEAD = 160;
/** A shorter tape than this is shown near by, with so much of the bike about it, mm. */
const NEAR = 450;
const NEAR_REACH = 420;
/** Sign of a part, px, and how far the line of the gauge's reference and the legs of an angle reach, mm. */
const PART_PX = 6;
const REFERENCE = 260;
/** The arc of an angle, as a part of its reference. */
const ARC_PART = 0.7;
const SCALE_REACH = 150;
const SCALE_HEIGHT = 34;
const MARGIN_PX = 10;

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function part(at: Point): Shape {
  return { kind: 'mark', role: 'dimension', at, sign: 'ring', radiusPx: PART_PX };
}

/** The two ends between which the arrows stand: level and upright tapes run square to the plumb lines of their parts. */
function tapeEnds(hold: Extract<Hold, { tool: 'tape' }>): readonly [Point, Point] {
  const { from, to, along } = hold;
  if (along === 'level') {
    const y = Math.min(from.y, to.y);
    return [
      { x: from.x, y },
      { x: to.x, y },
    ];
  }
  if (along === 'upright') {
    const x = Math.max(from.x, to.x);
    return [
      { x, y: from.y },
      { x, y: to.y },
    ];
  }
  return [from, to];
}

function gaugeShapes({ from, to, against }: Extract<Hold, { tool: 'gauge' }>): Shape[] {
  const towards = Math.atan2(to.y - from.y, to.x - from.x);
  // Of the two ends of the reference the one nearer to the line, so that the arc spans the angle that is read.
  const ends = against === 'level' ? [0, Math.PI, -Math.PI] : [Math.PI / 2, -Math.PI / 2];
  const start = ends.reduce((best, each) =>
    Math.abs(towards - each) < Math.abs(towards - best) ? each : best,
  );
  const reference = {
    x: from.x + REFERENCE * Math.cos(start),
    y: from.y + REFERENCE * Math.sin(start),
  };
  const radius = ARC_PART * REFERENCE;
  return [
    segment('snapGuide', from, reference),
    segment('highlight', from, to),
    pen()
      .move(from.x + radius * Math.cos(start), from.y + radius * Math.sin(start))
      .arc(from.x, from.y, radius, start, towards)
      .shape('dimension', { arrows: 'both' }),
    part(from),
    part(to),
  ];
}

function holdShapes(hold: Hold): Shape[] {
  switch (hold.tool) {
    case 'tape': {
      const [start, end] = tapeEnds(hold);
      const plumb =
        hold.along === 'straight'
          ? []
          : [segment('snapGuide', hold.from, start), segment('snapGuide', hold.to, end)];
      return [...plumb, segment('dimension', start, end, { arrows: 'both' }), part(hold.from), part(hold.to)];
    }
    case 'gauge':
      return gaugeShapes(hold);
    case 'round':
      return [pen().circle(hold.centre.x, hold.centre.y, hold.radius).shape('highlight'), part(hold.centre)];
    case 'scale':
      return hold.under.flatMap(({ x, y }) => [
        pen()
          .move(x - SCALE_REACH, y - SCALE_HEIGHT)
          .line(x + SCALE_REACH, y - SCALE_HEIGHT, x + SCALE_REACH, y, x - SCALE_REACH, y)
          .close()
          .shape('clamp'),
        part({ x, y }),
      ]);
    case 'eye':
      return hold.at.map(part);
  }
}

/** Where the words stand. */
function wordsAt(hold: Hold): Point {
  switch (hold.tool) {
    case 'tape': {
      const [start, end] = tapeEnds(hold);
      return middle(start, end);
    }
    case 'gauge':
      return middle(hold.from, hold.to);
    case 'round':
      return { x: hold.centre.x, y: hold.centre.y + hold.radius };
    case 'scale':
      return hold.under[0] ?? { x: 0, y: 0 };
    case 'eye':
      return hold.at[0] ?? { x: 0, y: 0 };
  }
}

function extentOf({ stance, hold }: HoldShown): Extent {
  const { machine, pose } = stance;
  if (hold.tool === 'tape' && distance(hold.from, hold.to) < NEAR) {
    const { x, y } = middle(hold.from, hold.to);
    return { left: x - NEAR_REACH, right: x + NEAR_REACH, bottom: y - NEAR_REACH, top: y + NEAR_REACH };
  }
  return {
    left: -machine.rearRadius - AROUND,
    right: pose.wheelbase + machine.frontRadius + AROUND,
    bottom: -AROUND,
    top: onGround(pose, machine.front.head).y + ABOVE_HEAD,
  };
}

/** The scene and the view that it is made for. Ground frame of the stance. */
export function holdScene(shown: HoldShown, window: HoldWindow): { scene: Scene; view: View } {
  const { stance, bike, setup, hold, words } = shown;
  const { widthPx, heightPx, sizePx } = window;
  const view = fitView(extentOf(shown), widthPx, heightPx, MARGIN_PX);
  const wanted: WantedLabel = { role: 'dimension', text: words, at: wordsAt(hold), spot: 'above', sizePx };
  return {
    view,
    scene: [
      { name: 'bike', ink: FAINT, shapes: [...groundShapes(), ...bikeShapes(stance, bike, setup)] },
      { name: 'construction', ink: 1, shapes: holdShapes(hold) },
      { name: 'labels', ink: 1, shapes: placeLabels([wanted], view, widthPx, heightPx) },
    ],
  };
}
