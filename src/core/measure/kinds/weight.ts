/** What a scale shows under one wheel. */
import type { MeasureKind } from '../held/measure-kind.ts';

export const weight = {
  key: 'weight',
  label: 'Weight on a wheel',
  quantity: 'mass',
  read: 'number',
  takes: [['wheel']],
  sd: 0.5,
  state: 'onWheels',
  betweenStates: false,
  slant: false,
  anyState: false,
  least: 0,
  most: 1500,
  drawnAs: 'scale',
  help: 'Level: the other wheel stands on a block as high as the scale. Raised: as the state says. The bike is held upright, nobody on it.',
  figure: ({ weighed, slope, place }, [wheel]) => {
    const { mass, centre } = weighed();
    const rear = place('rearAxle');
    const front = place('frontAxle');
    if (rear === null || front === null) return null;
    // On a floor that rises forward, what lies high weighs further back.
    const ahead = centre.x - rear.x - centre.y * Math.tan(slope);
    const onFront = (mass * ahead) / (front.x - rear.x);
    if (wheel === 'frontWheel') return onFront;
    return wheel === 'rearWheel' ? mass - onFront : null;
  },
  fromOther: null,
} as const satisfies MeasureKind;
