/** Holds that pins of the chain, clicked on a photo where it lies on a sprocket, count the teeth and place the middle. */
import { expect, it } from 'vitest';
import { onPicture } from '../../src/core/measure/photo/camera.ts';
import { holdBike, postureOf } from '../../src/core/measure/held/hold-bike.ts';
import { measureBike } from '../../src/core/measure/measure-bike.ts';
import {
  RINGS,
  type MeasurePhoto,
  type RimClick,
  type SprocketKey,
} from '../../src/core/measure/photo/photo.ts';
import { SPROCKET_RADIUS_SD, usualDepth } from '../../src/core/measure/photo/photo-usual.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { teethWords } from '../../src/words/measure/photo-words.ts';
import { asked, normalNumbers, originOn, trueValues, typedRows } from '../support/measured-sheet.ts';
import { aimed, CAMERA, NO_DOUBTS, pictured } from '../support/pictured-bike.ts';

const STYLE = { system: 'metric', decimal: '.' } as const;
const [ROAD] = DEMO_BIKES;
const origin = originOn(ROAD);
const truth = trueValues(origin, 7, 10);
const held = holdBike(postureOf(origin, truth), 'onWheels');
const camera = aimed({ ...CAMERA, mirrored: true }, 5000);
const KNOWN = [
  { ...asked('axleHeight', ['frontWheel']), sd: 0.5 },
  { ...asked('axleHeight', ['rearWheel']), sd: 0.5 },
  asked('offset'),
];
const SPROCKETS: readonly SprocketKey[] = ['frontSprocket', 'rearSprocket'];

/** Eight pins over half of a sprocket, whose radius is stated as that of a few teeth more or fewer. */
function pins(wheel: SprocketKey, tooLarge: number, normal: () => number): readonly RimClick[] {
  const middle = held?.place(RINGS[wheel]);
  const sprockets = held?.sprockets;
  if (!middle || !sprockets) throw new Error('the bike has no chain');
  const radius = wheel === 'frontSprocket' ? sprockets.front : sprockets.rear;
  const { value: depth, sd: depthSd } = usualDepth(wheel);
  const away = wheel === 'frontSprocket' ? 1 : -1;
  return Array.from({ length: 8 }, (_, i) => {
    const turn = Math.PI * (i / 7 - 0.5);
    const at = {
      x: middle.x + away * radius * Math.cos(turn),
      y: middle.y + radius * Math.sin(turn),
      z: depth,
    };
    const pixel = onPicture(camera, at);
    if (pixel === null) throw new Error('behind the camera');
    return {
      wheel,
      xPx: pixel.x + normal(),
      yPx: pixel.y + normal(),
      sdPx: 1,
      depth,
      depthSd,
      radius: radius + tooLarge,
      radiusSd: SPROCKET_RADIUS_SD,
    };
  });
}

function measured(change: (photo: MeasurePhoto, normal: () => number) => MeasurePhoto) {
  const normal = normalNumbers(11);
  const photo = change(pictured(origin, truth, camera, normal, NO_DOUBTS), normal);
  const rows = typedRows(origin, KNOWN, truth, normal);
  const found = measureBike({
    start: ROAD,
    sheet: { gaugeZeroed: true, rows, photos: [photo] },
    wanted: null,
  });
  if (!found.ok) throw new Error(found.reason);
  return found;
}

it.each([-8, 0, 8])('teeth are counted whole where the radius is stated %d mm too large', (tooLarge) => {
  const found = measured((photo, normal) => ({
    ...photo,
    rims: [...photo.rims, ...SPROCKETS.flatMap((part) => pins(part, tooLarge, normal))],
  }));
  const { setup } = ROAD;
  for (const [part, teeth] of [
    ['frontSprocket', setup.frontTeeth],
    ['rearSprocket', setup.rearTeeth],
  ] as const) {
    const counted = found.photos[0]?.teeth.find((each) => each.part === part);
    if (counted === undefined) throw new Error(part);
    expect([part, Math.round(counted.count)]).toEqual([part, teeth]);
    expect(counted.u).toBeLessThan(0.4);
    expect(Math.abs(counted.count - teeth)).toBeLessThan(3 * counted.u);
    const say = (set: number) =>
      teethWords(found.photos[0], part, { frontTeeth: set, rearTeeth: set }, STYLE);
    expect(say(teeth)).toMatch(
      new RegExp(`^The pins make ${teeth}( ± 1)? teeth\\. ${teeth} are set: that fits\\.$`),
    );
    expect(say(teeth + 3)).toContain(`${teeth + 3} are set: count them on the bike.`);
  }
});

it('pins place a sprocket that was not clicked, and add to the rear axle', () => {
  const without = (photo: MeasurePhoto): MeasurePhoto => ({
    ...photo,
    clicks: photo.clicks.filter(({ part }) => part !== 'countershaft' && part !== 'rearAxle'),
  });
  const bare = measured(without);
  const ringed = measured((photo, normal) => ({
    ...without(photo),
    rims: [...photo.rims, ...SPROCKETS.flatMap((part) => pins(part, 5, normal))],
  }));
  expect(bare.readings.frontSprocketHeight.fixed).toBe(false);
  expect(ringed.readings.frontSprocketHeight.fixed).toBe(true);
  expect(2 * (ringed.readings.frontSprocketHeight.u ?? NaN)).toBeLessThan(4);
  expect(ringed.readings.wheelbase.u).toBeLessThan(bare.readings.wheelbase.u ?? NaN);
  expect(ringed.agreement.chance).toBeGreaterThan(0.01);
});
