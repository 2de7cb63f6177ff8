/** The sagging lower run close up: the chain as it hangs, the taut line, how far it can be pushed, and both dimensions. */
import { frontTouch, rearTouch, runMiddle, type LowerRun } from '../../core/drive/lower-run.ts';
import { bentRun, type RunSlack } from '../../core/drive/chain-slack.ts';
import { hangingPoints, type HangingRun } from '../../core/drive/hanging-run.ts';
import type { Point } from '../../core/plane/point.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { sprocketShapes } from './chain-drawing.ts';
import { chainPlates } from './chain-plates.ts';
import { placeLabels, type WantedLabel } from '../shapes/label-placing.ts';
import { segment } from '../shapes/outline.ts';
import type { Role, Scene, Shape } from '../shapes/shape.ts';
import type { View } from '../shapes/view.ts';

/** A run that hangs, with how far its middle can be pushed. */
export interface SlackShown {
  readonly hanging: HangingRun;
  readonly slack: RunSlack;
}

export interface SlackWindow {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly style: NumberStyle;
  readonly sizePx: number;
}

/** What is left free beside the run, px, and of the sprockets beyond the touching points, mm. */
const MARGIN_PX = 12;
const BESIDE = 14;
/** Where the slack is dimensioned: behind the middle, as a part of the run's length. */
const SLACK_BEHIND = 0.17;
/** Arrows shorter than this have no room between their ends, px, and come from outside, so long. */
const LEAST_ARROW_PX = 26;
const OUTSIDE_PX = 22;

/** The run with all that is drawn about it fitted into the window, upright: down on the screen is down on the bike. */
function slackView({ hanging, slack }: SlackShown, window: SlackWindow): View {
  const { run } = hanging;
  const from = rearTouch(run, run.angle);
  const to = frontTouch(run, run.angle);
  const aside = Math.max(slack.up, slack.down, hanging.drop) + BESIDE;
  const left = from.x - BESIDE;
  const right = to.x + BESIDE;
  const bottom = Math.min(from.y, to.y, runMiddle(run).y - aside);
  const top = Math.max(from.y, to.y, runMiddle(run).y + aside);
  const free = (px: number): number => Math.max(1, px - 2 * MARGIN_PX);
  const scale = Math.min(free(window.widthPx) / (right - left), free(window.heightPx) / (top - bottom));
  return {
    scale,
    turn: 0,
    xPx: window.widthPx / 2 - (scale * (left + right)) / 2,
    yPx: window.heightPx / 2 + (scale * (bottom + top)) / 2,
  };
}

/** How far a dimension's arrows stand out beyond its ends, mm: nothing where they have room between them. */
function outside(length: number, scale: number): number {
  return length * scale >= LEAST_ARROW_PX ? 0 : OUTSIDE_PX / scale;
}

/** A dimension between two places: arrows between them, or from outside where there is no room for arrows. */
function dimension(from: Point, to: Point, scale: number): Shape[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (!(length > 0)) return [];
  const out = outside(length, scale) / length;
  if (out === 0) return [segment('dimension', from, to, { arrows: 'both' })];
  const beyond = (p: Point, sign: number): Point => ({
    x: p.x + sign * out * (to.x - from.x),
    y: p.y + sign * out * (to.y - from.y),
  });
  return [
    segment('dimension', beyond(from, -1), from, { arrows: 'end' }),
    segment('dimension', beyond(to, 1), to, { arrows: 'end' }),
  ];
}

/** The place `along` mm forward of the taut run's middle and `aside` mm below it, square to the run. */
function place(run: LowerRun, along: number, aside: number): Point {
  const middle = runMiddle(run);
  const [cos, sin] = [Math.cos(run.angle), Math.sin(run.angle)];
  return { x: middle.x + along * cos + aside * sin, y: middle.y + along * sin - aside * cos };
}

function throughPoints(role: Role, points: readonly Point[]): Shape {
  return {
    kind: 'path',
    role,
    steps: points.map((p, i) => ({ op: i === 0 ? 'move' : 'line', ...p })),
  };
}

/** Links drawn along the hanging run, an even number so that it begins and ends alike. */
function hangingPins(hanging: HangingRun): Point[] {
  const { run, spare } = hanging;
  const links = 2 * Math.max(1, Math.round((run.length + spare) / run.loop.pitch / 2));
  return hangingPoints(hanging, links + 1);
}

/**
 * The scene and the view it is made for. Everything to one scale and upright; the ghost lines are the run held as far
 * up and down at its middle as the chain lets it.
 */
export function slackScene(shown: SlackShown, window: SlackWindow): { scene: Scene; view: View } {
  const { hanging, slack } = shown;
  const { run } = hanging;
  const { loop } = run;
  const view = slackView(shown, window);
  const bike: Shape[] = [
    ...sprocketShapes({ centre: run.rear, radius: loop.rearRadius }, loop.rearTeeth, loop.pitch, true),
    ...sprocketShapes({ centre: run.front, radius: loop.frontRadius }, loop.frontTeeth, loop.pitch, false),
    chainPlates(hangingPins(hanging), false, loop.pitch),
  ];
  const behind = -SLACK_BEHIND * run.length;
  const ghosts = [slack.down, -slack.up].flatMap((aside) => {
    const bent = slack.total > 0 ? bentRun(run, aside) : null;
    return bent === null
      ? []
      : [throughPoints('reach', bent), segment('snapGuide', place(run, behind, aside), bent[1])];
  });
  const construction: Shape[] = [
    segment('chainLine', rearTouch(run, run.angle), frontTouch(run, run.angle)),
    ...ghosts,
    ...dimension(place(run, behind, -slack.up), place(run, behind, slack.down), view.scale),
    ...dimension(place(run, 0, 0), place(run, 0, hanging.drop), view.scale),
  ];
  const { style, sizePx } = window;
  const write = (mm: number): string => writeNumber(mm, 'length', style).text;
  const wanted: WantedLabel[] = [
    {
      role: 'dimension',
      text: `Hangs ${write(hanging.drop)}`,
      at: place(run, 0, hanging.drop + outside(hanging.drop, view.scale)),
      spot: 'right',
      sizePx,
    },
    {
      role: 'dimension',
      text: `${write(slack.total)} up and down`,
      at: place(run, behind, -slack.up - outside(slack.total, view.scale)),
      spot: 'left',
      sizePx,
    },
  ];
  const labels = placeLabels(wanted, view, window.widthPx, window.heightPx);
  return {
    view,
    scene: [
      { name: 'bike', ink: 1, shapes: bike },
      { name: 'construction', ink: 1, shapes: construction },
      { name: 'labels', ink: 1, shapes: labels },
    ],
  };
}
