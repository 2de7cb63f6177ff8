/** How long a sheet of measurements takes, from the rows as typed to every reading with its ±, and a rim's edge on a photo. */
import { measureBike } from '../../src/core/measure/measure-bike.ts';
import { holdBike, postureOf } from '../../src/core/measure/held/hold-bike.ts';
import { onPicture } from '../../src/core/measure/photo/camera.ts';
import { findRimEdge } from '../../src/core/measure/photo/rim-edge.ts';
import { runMeasuring } from '../../src/workers/run-measuring.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import {
  asked,
  CHASSIS,
  LINKS_AND_WEIGHTS,
  normalNumbers,
  originOn,
  trueValues,
  typedRows,
} from '../support/measured-sheet.ts';
import { aimed, CAMERA, RIM_DEPTH, RIM_RADIUS } from '../support/pictured-bike.ts';
import { renderedPhoto } from '../support/rendered-photo.ts';
import { timer } from '../support/timed.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goals, ms: a sheet is fitted anew with each figure typed; a long one may be felt. */
const GOAL_MS = 30;
const LONG_GOAL_MS = 300;
/** A hand waits for the edge after its third click. */
const EDGE_GOAL_MS = 50;
/** Drawn beside the page, while a person reads on. */
const DRAWN = 10_000;
const DRAWS_GOAL_MS = 500;
/** µs in a ms. */
const US = 1000;

export default function measure(short: boolean): string[] {
  const { timed } = timer(short);
  const [start] = DEMO_BIKES;
  const origin = originOn(start);
  const truth = trueValues(origin, 3, 3);
  const noise = normalNumbers(5);
  const chassis = [...CHASSIS, asked('exposedTube'), asked('exposedTube', [], 'bothHanging')];
  const sheets = [
    { what: '27 rows of a chassis', rows: chassis, most: GOAL_MS },
    {
      what: '35 rows with a rocker’s bolts',
      rows: [...CHASSIS, ...LINKS_AND_WEIGHTS.slice(0, 10)],
      most: GOAL_MS,
    },
    { what: '500 rows', rows: Array.from({ length: 20 }, () => CHASSIS).flat(), most: LONG_GOAL_MS },
  ] as const;
  const lines = sheets.map(({ what, rows, most }): BenchRow => {
    const typed = typedRows(origin, rows, truth, noise);
    const sheet = { gaugeZeroed: true, rows: typed };
    const us = timed(() => {
      const found = measureBike({ start, sheet, wanted: null });
      if (!found.ok) throw new Error(found.reason);
      return found.agreement.chiSquare;
    });
    return { what, figure: us / US, unit: 'ms', goal: { most } };
  });
  return benchTable([...lines, drawsLine(short), edgeLine(short)]);
}

/** Bikes drawn by lot from the covariance of a chassis, in what the thread beside the page runs. */
function drawsLine(short: boolean): BenchRow {
  const [start] = DEMO_BIKES;
  const origin = originOn(start);
  const rows = typedRows(origin, CHASSIS, trueValues(origin, 3, 3), normalNumbers(5));
  const by = { start, sheet: { gaugeZeroed: true, rows } };
  const us = timer(short).timed(() => {
    const { what, found } = runMeasuring(by, { what: 'draws', reading: 'trail', count: DRAWN });
    if (what !== 'draws' || found === null) throw new Error('no bikes');
    return found.least;
  });
  return {
    what: '10,000 bikes drawn from 25 rows',
    figure: us / US,
    unit: 'ms',
    goal: { most: DRAWS_GOAL_MS },
  };
}

/** The edge of a rim on a photo of 12 megapixels that the bike fills, from three clicks. */
function edgeLine(short: boolean): BenchRow {
  const [start] = DEMO_BIKES;
  const origin = originOn(start);
  const truth = trueValues(origin, 7, 10);
  const axle = holdBike(postureOf(origin, truth), 'onWheels')?.place('frontAxle');
  if (axle === null || axle === undefined) throw new Error('the bike cannot be held so');
  const camera = aimed(CAMERA, 5000);
  const photo = { leftPx: 0, topPx: 0, ...renderedPhoto(origin, truth, camera, normalNumbers(3)) };
  const clicks = [0.4, 2.5, 4.6].map((turn) => {
    const reach = RIM_RADIUS + 3;
    const at = { x: axle.x + reach * Math.cos(turn), y: axle.y + reach * Math.sin(turn), z: RIM_DEPTH };
    const pixel = onPicture(camera, at);
    if (pixel === null) throw new Error('behind the camera');
    return pixel;
  });
  const us = timer(short).timed(() => {
    const found = findRimEdge(photo, clicks);
    if (!found.ok) throw new Error(found.reason);
    return found.sdPx;
  });
  return { what: 'the edge of a rim on a photo', figure: us / US, unit: 'ms', goal: { most: EDGE_GOAL_MS } };
}
