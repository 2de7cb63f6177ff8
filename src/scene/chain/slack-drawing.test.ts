/** Tests of the sagging lower run as it is drawn. */
import { describe, expect, it } from 'vitest';
import { lowerRun, runMiddle } from '../../core/drive/lower-run.ts';
import { chainLoop } from '../../core/drive/chain-loop.ts';
import { chainSlack } from '../../core/drive/chain-slack.ts';
import { hangingRun } from '../../core/drive/hanging-run.ts';
import { distance, type Point } from '../../core/plane/point.ts';
import type { PathShape, Role, Shape } from '../shapes/shape.ts';
import { slackScene, type SlackShown, type SlackWindow } from './slack-drawing.ts';
import { toScreen } from '../shapes/view.ts';

const window: SlackWindow = {
  widthPx: 340,
  heightPx: 120,
  style: { system: 'metric', decimal: '.' },
  sizePx: 13,
};

function shown(spare: number): SlackShown {
  const run = lowerRun(chainLoop(15, 45, 15.875), { x: 0, y: 310 }, { x: 640, y: 410 });
  if (run === null) throw new Error('The sprockets overlap');
  const hanging = hangingRun(run, spare);
  const slack = chainSlack(run, spare);
  if (!hanging.ok || !slack.ok) throw new Error('no slack');
  return { hanging, slack };
}

function paths(shapes: readonly Shape[], role: Role): PathShape[] {
  return shapes.filter((shape): shape is PathShape => shape.kind === 'path' && shape.role === role);
}

function pointsOf(shape: PathShape): Point[] {
  return shape.steps.flatMap((step) => (step.op === 'move' || step.op === 'line' ? [step] : []));
}

describe('the slack drawing', () => {
  const slack = shown(0.8);
  const { scene, view } = slackScene(slack, window);
  const shapes = scene.flatMap((layer) => layer.shapes);
  const { run } = slack.hanging;

  it('shows the run held up and down as ghosts, bent as far as the slack goes', () => {
    const middle = runMiddle(run);
    const bends = paths(shapes, 'reach').map((ghost) => distance(pointsOf(ghost)[1], middle));
    expect(bends).toHaveLength(2);
    expect(bends[0]).toBeCloseTo(slack.slack.down, 9);
    expect(bends[1]).toBeCloseTo(slack.slack.up, 9);
  });

  it('dimensions the drop and the slack, and says both', () => {
    const words = shapes.flatMap((shape) =>
      shape.kind === 'label' ? [shape.text.replace(/\u00a0/g, ' ')] : [],
    );
    expect(words.sort()).toEqual([
      `${slack.slack.total.toFixed(1)} mm up and down`,
      `Hangs ${slack.hanging.drop.toFixed(1)} mm`,
    ]);
    // Too small for arrows between: two from outside for each, whose points are as far apart as the dimension.
    const ends = paths(shapes, 'dimension').map((arrow) => pointsOf(arrow)[1]);
    expect(ends).toHaveLength(4);
    expect(distance(ends[0], ends[1])).toBeCloseTo(slack.slack.total, 9);
    expect(distance(ends[2], ends[3])).toBeCloseTo(slack.hanging.drop, 9);
  });

  it('puts arrows between where there is room', () => {
    const wide = slackScene(shown(12), { ...window, widthPx: 1200, heightPx: 400 });
    const arrows = paths(
      wide.scene.flatMap((layer) => layer.shapes),
      'dimension',
    );
    expect(arrows.map(({ arrows: heads }) => heads)).toEqual(['both', 'both']);
  });

  it('has the chain below the taut line, and the whole run in its window', () => {
    const [chain] = paths(shapes, 'chain');
    const below = pointsOf(chain).map(
      (p) => Math.sin(run.angle) * (p.x - runMiddle(run).x) - Math.cos(run.angle) * (p.y - runMiddle(run).y),
    );
    // The plates stand out on both sides of their pins.
    expect(Math.max(...below)).toBeGreaterThan(slack.hanging.drop);
    expect(Math.max(...below)).toBeLessThan(slack.hanging.drop + run.loop.pitch);
    for (const p of pointsOf(chain)) {
      const { x, y } = toScreen(view, p);
      expect(x > 0 && x < window.widthPx && y > 0 && y < window.heightPx).toBe(true);
    }
  });

  it('of a taut chain shows the line alone, without dimensions', () => {
    const taut = slackScene(shown(0), window).scene.flatMap((layer) => layer.shapes);
    expect(paths(taut, 'reach')).toEqual([]);
    expect(paths(taut, 'dimension')).toEqual([]);
    expect(paths(taut, 'chain')).toHaveLength(1);
  });
});
