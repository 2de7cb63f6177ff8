/** Tests of the gestures on the side view, move by move. */
import { describe, expect, it } from 'vitest';
import { hitRadiusPx } from './handle-hit.ts';
import { AT_REST, sideViewStep, type SideViewContext } from './side-view-gesture.ts';
import type { SideViewEffect } from './side-view-effect.ts';
import type { PointerInput, SideViewInput } from './side-view-input.ts';

const CONTEXT: SideViewContext = {
  handles: [
    { id: 'pivot', xPx: 100, yPx: 100 },
    { id: 'axle', xPx: 300, yPx: 100 },
    { id: 'sprocket', xPx: 106, yPx: 100 },
  ],
  hitRadiusPx,
  armed: null,
  placing: false,
  tapOnly: false,
};
const armedWith = (armed: string): SideViewContext => ({ ...CONTEXT, armed });

type Kind = PointerInput['type'];

const by =
  (pointer: PointerInput['pointer']) =>
  (type: Kind, xPx: number, yPx: number, more: Partial<PointerInput> = {}): PointerInput => ({
    type,
    id: 1,
    pointer,
    xPx,
    yPx,
    button: 0,
    ctrl: false,
    shift: false,
    alt: false,
    ...more,
  });
const mouse = by('mouse');
const touch = by('touch');
const wheel = (dxPx: number, dyPx: number, ctrl = false): SideViewInput => ({
  type: 'wheel',
  xPx: 200,
  yPx: 80,
  dxPx,
  dyPx,
  ctrl,
});
const ESCAPE: SideViewInput = { type: 'key', key: 'Escape', shift: false, alt: false, ctrl: false };

function play(inputs: readonly SideViewInput[], context: SideViewContext = CONTEXT) {
  let gesture = AT_REST;
  const effects: SideViewEffect[] = [];
  for (const input of inputs) {
    const step = sideViewStep(gesture, input, context);
    gesture = step.gesture;
    effects.push(...step.effects);
  }
  return { gesture, effects };
}
const effectsOf = (inputs: readonly SideViewInput[], context?: SideViewContext) =>
  play(inputs, context).effects;

describe('handles that can only be tapped', () => {
  const tapOnly: SideViewContext = { ...CONTEXT, tapOnly: true };

  it('pan under a drag', () => {
    expect(
      effectsOf([mouse('down', 300, 100), mouse('move', 310, 96), mouse('up', 310, 96)], tapOnly),
    ).toEqual([{ kind: 'pan', dxPx: 10, dyPx: -4 }]);
  });

  it('take a tap as any other', () => {
    expect(effectsOf([mouse('down', 300, 100), mouse('up', 300, 100)], tapOnly)).toEqual([
      { kind: 'tapHandle', handle: 'axle' },
    ]);
  });
});

describe('dragging a handle', () => {
  it('S5: pressing a handle beside its middle and letting go does not move it', () => {
    const taps = effectsOf([mouse('down', 308, 95), mouse('move', 309, 95), mouse('up', 309, 95)]);
    expect(taps).toEqual([{ kind: 'tapHandle', handle: 'axle' }]);
    const back = effectsOf([
      mouse('down', 308, 95),
      mouse('move', 320, 95),
      mouse('move', 308, 95),
      mouse('up', 308, 95),
    ]);
    expect(back).toEqual([
      { kind: 'grab', handle: 'axle' },
      { kind: 'drag', handle: 'axle', dxPx: 12, dyPx: 0, snapping: true },
      { kind: 'drag', handle: 'axle', dxPx: 0, dyPx: 0, snapping: true },
      { kind: 'drop', handle: 'axle' },
    ]);
  });

  it('S5: a release outside the window ends the drag there', () => {
    const { gesture, effects } = play([
      mouse('down', 300, 100),
      mouse('move', 310, 100),
      mouse('up', -50, 9000),
    ]);
    expect(effects.slice(2)).toEqual([
      { kind: 'drag', handle: 'axle', dxPx: -350, dyPx: 8900, snapping: true },
      { kind: 'drop', handle: 'axle' },
    ]);
    expect(gesture.doing.kind).toBe('nothing');
    expect(
      effectsOf([mouse('down', 300, 100), mouse('move', 310, 100), { type: 'lostCapture', id: 1 }]).at(-1),
    ).toEqual({ kind: 'drop', handle: 'axle' });
  });

  it('S5: Escape restores the handle, and the rest of the press does nothing', () => {
    const { gesture, effects } = play([
      mouse('down', 300, 100),
      mouse('move', 310, 100),
      ESCAPE,
      mouse('move', 330, 100),
      mouse('up', 330, 100),
    ]);
    expect(effects.slice(2)).toEqual([{ kind: 'restore', handle: 'axle' }]);
    expect(gesture.doing.kind).toBe('nothing');
  });

  it('S5: a cancelled pointer restores the handle', () => {
    const { gesture, effects } = play([
      touch('down', 300, 100),
      touch('move', 310, 100),
      touch('cancel', 310, 100),
      { type: 'lostCapture', id: 1 },
    ]);
    expect(effects.slice(2)).toEqual([{ kind: 'restore', handle: 'axle' }]);
    expect(gesture.doing.kind).toBe('nothing');
  });

  it('Escape before a press has moved leaves neither a tap nor a drag', () => {
    expect(
      effectsOf([mouse('down', 300, 100), ESCAPE, mouse('move', 330, 100), mouse('up', 330, 100)]),
    ).toEqual([]);
  });

  it('other keys do nothing, and Escape restores nothing when nothing is dragged', () => {
    const down = { type: 'key', key: 'ArrowLeft', shift: false, alt: false, ctrl: false } as const;
    expect(effectsOf([mouse('down', 300, 100), mouse('move', 310, 100), down]).length).toBe(2);
    expect(effectsOf([ESCAPE])).toEqual([]);
  });

  it('a move of less than 3 px is a tap, and one of 3 px drags by all of it', () => {
    expect(effectsOf([mouse('down', 300, 100), mouse('up', 302.9, 100)])).toEqual([
      { kind: 'tapHandle', handle: 'axle' },
    ]);
    expect(effectsOf([mouse('down', 300, 100), mouse('up', 303, 100)])).toEqual([
      { kind: 'grab', handle: 'axle' },
      { kind: 'drag', handle: 'axle', dxPx: 3, dyPx: 0, snapping: true },
      { kind: 'drop', handle: 'axle' },
    ]);
  });

  it.each(['ctrl', 'alt'] as const)('%s held suspends snapping while it is held', (key) => {
    const drags = effectsOf([
      mouse('down', 300, 100),
      mouse('move', 310, 100, { [key]: true }),
      mouse('move', 320, 100),
    ]).filter((effect) => effect.kind === 'drag');
    expect(drags.map((drag) => drag.snapping)).toEqual([false, true]);
  });

  it('the second mouse button does nothing', () => {
    const second = { button: 2 };
    expect(
      effectsOf([
        mouse('down', 300, 100, second),
        mouse('move', 300, 100, second),
        mouse('up', 300, 100, second),
      ]),
    ).toEqual([{ kind: 'hover', handle: 'axle' }]);
  });

  it('a second pointer during a drag is ignored', () => {
    const palm = { id: 2 };
    const pen = by('pen');
    const effects = effectsOf([
      pen('down', 300, 100),
      pen('move', 310, 100),
      touch('down', 10, 10, palm),
      touch('move', 50, 50, palm),
      touch('up', 50, 50, palm),
      { type: 'lostCapture', id: 2 },
      pen('up', 310, 100),
    ]);
    expect(effects.map((effect) => effect.kind)).toEqual(['grab', 'drag', 'drop']);
  });
});

describe('handles in reach', () => {
  it('S3: a mouse takes a handle within 12 px and a finger within 22 px', () => {
    const tap = (press: typeof mouse, xPx: number) =>
      effectsOf([press('down', xPx, 100), press('up', xPx, 100)]);
    expect(tap(mouse, 312)).toEqual([{ kind: 'tapHandle', handle: 'axle' }]);
    expect(tap(mouse, 312.1)).toEqual([{ kind: 'tapPlace', xPx: 312.1, yPx: 100 }]);
    expect(tap(touch, 322)).toEqual([{ kind: 'tapHandle', handle: 'axle' }]);
    expect(tap(touch, 322.1)).toEqual([{ kind: 'tapPlace', xPx: 322.1, yPx: 100 }]);
  });

  it('S3: a tap on several handles asks which, the nearest first', () => {
    expect(effectsOf([mouse('down', 105, 100), mouse('up', 105, 100)])).toEqual([
      { kind: 'choose', handles: ['sprocket', 'pivot'], xPx: 105, yPx: 100 },
    ]);
  });

  it('a drag on several takes the nearest, or the armed one', () => {
    const drag = [mouse('down', 105, 100), mouse('move', 125, 100)];
    expect(effectsOf(drag)[0]).toEqual({ kind: 'grab', handle: 'sprocket' });
    expect(effectsOf(drag, armedWith('pivot'))[0]).toEqual({ kind: 'grab', handle: 'pivot' });
  });

  it('S22: while a handle waits for its place a tap gives it, even on another handle and however near', () => {
    const tap = [mouse('down', 298, 100), mouse('up', 298, 100)];
    const place = [{ kind: 'tapPlace', xPx: 298, yPx: 100 }];
    for (const armed of ['pivot', 'axle'])
      expect(effectsOf(tap, { ...armedWith(armed), placing: true })).toEqual(place);
  });

  it('S22: a tap on a handle chooses it, whichever was chosen before, and places nothing', () => {
    const tap = [mouse('down', 298, 100), mouse('up', 298, 100)];
    for (const armed of ['pivot', 'axle'])
      expect(effectsOf(tap, armedWith(armed))).toEqual([{ kind: 'tapHandle', handle: 'axle' }]);
  });

  it('hovering is reported once on the way in and once on the way out', () => {
    const effects = effectsOf([
      mouse('move', 300, 105),
      mouse('move', 301, 105),
      mouse('move', 200, 105),
      mouse('move', 300, 105),
      mouse('cancel', 300, 105),
    ]);
    expect(effects).toEqual([
      { kind: 'hover', handle: 'axle' },
      { kind: 'hover', handle: null },
      { kind: 'hover', handle: 'axle' },
      { kind: 'hover', handle: null },
    ]);
  });
});

describe('the view', () => {
  it('S4: a wheel that turns sideways pans against its turn', () => {
    expect(effectsOf([wheel(30, -10)])).toEqual([{ kind: 'pan', dxPx: -30, dyPx: 10 }]);
  });

  it('S4: the wheel zooms about the cursor, with Ctrl too, and back by the same', () => {
    const [nearer, further] = effectsOf([wheel(0, -7), wheel(0, 7, true)]);
    expect(nearer).toMatchObject({ kind: 'zoom', xPx: 200, yPx: 80 });
    if (nearer.kind !== 'zoom' || further.kind !== 'zoom') throw new Error('no zoom');
    expect(nearer.factor).toBeGreaterThan(1);
    expect(nearer.factor * further.factor).toBeCloseTo(1, 12);
  });

  it('a coarse wheel zooms by no more than a third at once', () => {
    const [coarse] = effectsOf([wheel(0, -500, true)]);
    expect(coarse).toMatchObject({ kind: 'zoom', factor: Math.exp(0.25) });
  });

  it('the wheel rests while a handle is held', () => {
    expect(
      effectsOf([mouse('down', 300, 100), mouse('move', 310, 100), wheel(0, 30), wheel(0, 30, true)]).length,
    ).toBe(2);
  });

  it('S4: a drag on an empty place pans by all of its way', () => {
    expect(
      effectsOf([
        mouse('down', 200, 300),
        mouse('move', 202, 300),
        mouse('move', 210, 305),
        mouse('up', 211, 305),
      ]),
    ).toEqual([
      { kind: 'pan', dxPx: 10, dyPx: 5 },
      { kind: 'pan', dxPx: 1, dyPx: 0 },
    ]);
  });

  it('S4: the middle button pans from anywhere, on a handle too', () => {
    const middle = { button: 1 };
    expect(
      effectsOf([
        mouse('down', 300, 100, middle),
        mouse('move', 290, 100, middle),
        mouse('up', 290, 100, middle),
      ]),
    ).toEqual([{ kind: 'pan', dxPx: -10, dyPx: 0 }]);
  });

  it('S4: a second finger during a drag restores the point, then pinches', () => {
    const effects = effectsOf([
      touch('down', 300, 100),
      touch('move', 310, 100),
      touch('down', 410, 100, { id: 2 }),
      touch('move', 510, 100, { id: 2 }),
    ]);
    expect(effects.slice(2)).toEqual([
      { kind: 'restore', handle: 'axle' },
      { kind: 'pan', dxPx: 50, dyPx: 0 },
      { kind: 'zoom', xPx: 410, yPx: 100, factor: 2 },
    ]);
  });

  it('S4: what lies under two fingers stays under them however they move', () => {
    // A place on the side view follows p → factor · p + shift; every pan and zoom is put into both.
    let factor = 1;
    let shift = { x: 0, y: 0 };
    const effects = effectsOf([
      touch('down', 200, 300),
      touch('down', 260, 380, { id: 2 }),
      touch('move', 180, 290),
      touch('move', 300, 450, { id: 2 }),
      touch('move', 240, 370),
    ]);
    for (const effect of effects) {
      if (effect.kind === 'pan') shift = { x: shift.x + effect.dxPx, y: shift.y + effect.dyPx };
      else if (effect.kind === 'zoom') {
        factor *= effect.factor;
        shift = {
          x: effect.xPx + (shift.x - effect.xPx) * effect.factor,
          y: effect.yPx + (shift.y - effect.yPx) * effect.factor,
        };
      } else throw new Error(`${effect.kind} is no part of a pinch`);
    }
    // The place between both fingers, and their distance: 100 px at first, 100 px at last.
    expect(factor * 230 + shift.x).toBeCloseTo(270, 9);
    expect(factor * 340 + shift.y).toBeCloseTo(410, 9);
    expect(factor).toBeCloseTo(1, 12);
  });

  it('of two pinching fingers the one that stays goes on panning, and taps nothing', () => {
    const { gesture, effects } = play([
      touch('down', 300, 100),
      touch('down', 400, 100, { id: 2 }),
      touch('down', 900, 900, { id: 3 }),
      touch('up', 900, 900, { id: 3 }),
      touch('up', 300, 100),
      { type: 'lostCapture', id: 1 },
      touch('move', 420, 110, { id: 2 }),
      touch('up', 420, 110, { id: 2 }),
    ]);
    expect(effects).toEqual([{ kind: 'pan', dxPx: 20, dyPx: 10 }]);
    expect(gesture.doing.kind).toBe('nothing');
  });

  it('fingers on one spot zoom by a finite factor', () => {
    const effects = effectsOf([
      touch('down', 200, 300),
      touch('down', 200, 300, { id: 2 }),
      touch('move', 216, 300, { id: 2 }),
    ]);
    expect(effects.at(-1)).toEqual({ kind: 'zoom', xPx: 208, yPx: 300, factor: 2 });
  });
});
