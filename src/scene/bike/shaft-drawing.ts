/** A shaft drive: its housing along the swingarm, bellows at the pivot and the bevel box about the rear axle. */
import type { Stance } from '../../core/standing/stance.ts';
import { along, pen } from '../shapes/outline.ts';
import { bracketShapes } from './rear-brake-drawing.ts';
import type { Shape } from '../shapes/shape.ts';
import { torqueArmLine } from '../construction/squat-construction.ts';

/** Drawn sizes, mm; they carry no measurement. */
const TUBE_HALF = 31;
const TUBE_HALF_AT_BOX = 37;
const BOX = 84;
const COVER = 58;
const BOLTS = 8;
const FOLDS = 5;
const FOLD = 13;
const BELLOWS_HALF = 41;

export function shaftDriveShapes(standing: Stance): Shape[] {
  const pivot = standing.pose.pivot;
  const axle = standing.rearAxle;
  const place = along(pivot, axle);
  const arm = standing.machine.rear.arm;
  const tubeFrom = FOLDS * FOLD - 8;
  const bellows = pen(place).move(-10, -BELLOWS_HALF + 6);
  for (let i = 0; i < FOLDS; i++)
    bellows.line(i * FOLD, -BELLOWS_HALF, i * FOLD + FOLD / 2, -BELLOWS_HALF + 8);
  for (let i = FOLDS - 1; i >= 0; i--)
    bellows.line(i * FOLD + FOLD / 2, BELLOWS_HALF - 8, i * FOLD, BELLOWS_HALF);
  const folds = pen(place);
  for (let i = 0; i < FOLDS; i++)
    folds.move(i * FOLD + FOLD / 2, -BELLOWS_HALF + 8).line(i * FOLD + FOLD / 2, BELLOWS_HALF - 8);
  const bolts = pen();
  for (let i = 0; i < BOLTS; i++) {
    const at = (2 * Math.PI * (i + 0.5)) / BOLTS;
    const r = (BOX + COVER) / 2;
    bolts.circle(axle.x + r * Math.cos(at), axle.y + r * Math.sin(at), 4.5);
  }
  const torqueArm = torqueArmLine(standing);
  return [
    ...(torqueArm === null ? [] : bracketShapes(axle, torqueArm)),
    pen(place)
      .move(tubeFrom, -TUBE_HALF)
      .line(arm - BOX * 1.25, -TUBE_HALF)
      .curve(arm - BOX, -TUBE_HALF, arm - BOX * 0.8, -TUBE_HALF_AT_BOX, arm, -BOX)
      .line(arm, BOX)
      .curve(arm - BOX * 0.8, TUBE_HALF_AT_BOX, arm - BOX, TUBE_HALF, arm - BOX * 1.25, TUBE_HALF)
      .line(tubeFrom, TUBE_HALF)
      .close()
      .shape('swingarm'),
    bellows.close().shape('tyre'),
    folds.shape('spoke'),
    pen().circle(axle.x, axle.y, BOX).shape('swingarm'),
    pen().circle(axle.x, axle.y, COVER).shape('clamp'),
    bolts.shape('axle'),
    pen().circle(axle.x, axle.y, 20).shape('clamp'),
    pen().circle(axle.x, axle.y, 9).shape('axle'),
    pen().circle(pivot.x, pivot.y, 19).shape('clamp'),
    pen().circle(pivot.x, pivot.y, 8).shape('axle'),
  ];
}
