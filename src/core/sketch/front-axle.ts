/** The front axle. */
import { inFrame } from '../chassis/pose.ts';
import { always, type BikePoint } from './bike-point.ts';
import { measureSteering } from './measure-steering.ts';

export const frontAxle: BikePoint = {
  label: 'Front axle',
  help: 'Centre of the front axle.',
  applies: always,
  place: ({ frontAxle }) => frontAxle,
  move: (move) => measureSteering(move, { axle: inFrame(move.stance.pose, move.target) }),
  placedBy: {
    fields: ['fork.length', 'fork.axleLead'],
    tyre: null,
    words: () =>
      'Fork and axle lead place the front axle from the steering head; its height is the tyre’s radius.',
  },
  staysStill: 'steeringHead',
};
