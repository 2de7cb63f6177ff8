/** The rear axle. */
import { inFrame } from '../chassis/pose.ts';
import { always, type BikePoint } from './bike-point.ts';
import { measureArm } from './measure-arm.ts';

export const rearAxle: BikePoint = {
  label: 'Rear axle',
  help: 'Centre of the rear axle.',
  applies: always,
  place: ({ rearAxle }) => rearAxle,
  move: (move) => measureArm(move, { axle: inFrame(move.stance.pose, move.target), pivot: { x: 0, y: 0 } }),
  placedBy: {
    fields: ['swingarm.length', 'swingarm.toppedOutAngleDeg'],
    tyre: null,
    words: ({ swingarm }) =>
      swingarm.links === null
        ? 'Arm and angle place the rear axle from the pivot; its height is the tyre’s radius.'
        : 'The arm’s length and the links place the rear axle from the pivot; its height is the tyre’s radius.',
  },
  staysStill: 'steeringHead',
};
