/** The words on the side view that go with the chosen reading's own lines. */
import { onGround } from '../../core/chassis/pose.ts';
import { brakeAntiRise } from '../../core/readings/brake-anti-rise.ts';
import { engineBraking } from '../../core/readings/engine-braking.ts';
import { forkTubeSpare } from '../../core/readings/fork-tube-spare.ts';
import { frontTravelLeft } from '../../core/readings/front-travel-left.ts';
import { frontWheelLoad } from '../../core/readings/front-wheel-load.ts';
import type { Construction, Reading } from '../../core/readings/reading.ts';
import { rearTravelLeft } from '../../core/readings/rear-travel-left.ts';
import { rearWheelLoad } from '../../core/readings/rear-wheel-load.ts';
import { tyreToClampGap } from '../../core/readings/tyre-to-clamp-gap.ts';
import { TOUCH_PARTS } from '../../core/parts/touch-parts.ts';
import type { Point } from '../../core/plane/point.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import { QUANTITIES } from '../../core/units/all-quantities.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { brakeLine, engineBrakingLine, stayLine } from './braking-lines.ts';
import type { WantedLabel } from '../shapes/label-placing.ts';
import { clampGapPlaces, frontAxleAt } from './suspension-lines.ts';

export interface LitLabelOptions {
  readonly style: NumberStyle;
  readonly sizePx: number;
  readonly brief: boolean;
  readonly lit: Construction | null;
}

/** Where along the wheelbase the braking lines are named. */
const NAMED_AT = 0.62;

/** Labels of the lit construction; none for those whose words are always there. */
export function litLabels(on: StandingBike, { style, sizePx, brief, lit }: LitLabelOptions): WantedLabel[] {
  const value = (reading: Reading): string | null => {
    const found = reading.read(on);
    if (typeof found !== 'number') return null;
    const { quantity } = reading;
    return writeNumber(QUANTITIES[quantity].fromCore(found), quantity, style).text;
  };
  const along = (slope: number): Point => ({
    x: NAMED_AT * on.pose.wheelbase,
    y: NAMED_AT * on.pose.wheelbase * slope,
  });
  const label = (
    role: WantedLabel['role'],
    text: string,
    at: Point,
    spot: WantedLabel['spot'],
  ): WantedLabel => ({
    role,
    text,
    at,
    spot,
    sizePx,
  });
  const line = (name: string, reading: Reading): string => {
    const percent = value(reading);
    if (percent === null) return name;
    return brief ? `${name} ${percent}` : `${name} line, anti-rise ${percent}`;
  };
  switch (lit) {
    case 'engineBrakingLine':
      return [
        label(
          'engineBrakingLine',
          line('Engine-braking', engineBraking),
          along(engineBrakingLine(on)),
          'right',
        ),
      ];
    case 'brakeLine': {
      const slope = brakeLine(on);
      if (slope === null) return [];
      const stay = stayLine(on);
      const labels = [label('brakeLine', line('Rear-brake', brakeAntiRise), along(slope), 'right')];
      if (stay !== null) {
        const middle = { x: (stay.from.x + stay.to.x) / 2, y: (stay.from.y + stay.to.y) / 2 };
        labels.push(label('stayLine', 'Caliper’s stay', middle, 'below'));
      }
      return labels;
    }
    case 'forkTravel': {
      const left = value(frontTravelLeft);
      const at = frontAxleAt(on, on.travel.front);
      return left === null ? [] : [label('dimension', `Fork travel left ${left}`, at, 'right')];
    }
    case 'rearTravel': {
      const left = value(rearTravelLeft);
      const at = on.rearAxle;
      return left === null ? [] : [label('dimension', `Rear travel left ${left}`, at, 'left')];
    }
    case 'forkTop': {
      const spare = value(forkTubeSpare);
      return spare === null
        ? []
        : [label('dimension', `Tube to spare ${spare}`, onGround(on.pose, on.machine.front.head), 'right')];
    }
    case 'clampGap': {
      const gap = value(tyreToClampGap);
      const places = clampGapPlaces(on);
      if (gap === null || places === null) return [];
      const middle = { x: (places.tyre.x + places.clamp.x) / 2, y: (places.tyre.y + places.clamp.y) / 2 };
      return [label('dimension', brief ? gap : `${gap} with the fork fully in`, middle, 'right')];
    }
    case 'clearance':
      return on.machine.touching.map(({ key, at }) => {
        const place = onGround(on.pose, at);
        const height = writeNumber(place.y, 'length', style).text;
        return label('dimension', brief ? height : `${TOUCH_PARTS[key].label} ${height}`, place, 'below');
      });
    case 'wheelLoads': {
      const [front, rear] = [value(frontWheelLoad), value(rearWheelLoad)];
      if (front === null || rear === null) return [];
      return [
        label('dimension', rear, { x: 0, y: -60 }, 'right'),
        label('dimension', front, { x: on.pose.wheelbase, y: -60 }, 'right'),
      ];
    }
    default:
      return [];
  }
}
