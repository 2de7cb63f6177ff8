/** What a scale shows under one wheel. */
import type { MeasureKind } from './measure-kind.ts';

export const weight = {
  key: 'weight',
  label: 'Weight on a wheel',
  quantity: 'mass',
  read: 'number',
  takes: [['wheel']],
  sd: 0.5,
  state: 'onWheels',
  betweenStates: false,
  least: 0,
  most: 1500,
  help: 'Both wheels on one level, one on the scale and the other on a block as high; nobody on the bike.',
  figure: ({ mass, centre, place }, [wheel]) => {
    const rear = place('rearAxle');
    const front = place('frontAxle');
    if (rear === null || front === null) return null;
    const onFront = (mass * (centre.x - rear.x)) / (front.x - rear.x);
    if (wheel === 'frontWheel') return onFront;
    return wheel === 'rearWheel' ? mass - onFront : null;
  },
  fromOther: null,
} as const satisfies MeasureKind;
