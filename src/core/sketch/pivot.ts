/** The swingarm pivot. */
import { inFrame } from '../chassis/pose.ts';
import { always, type BikePoint } from './bike-point.ts';
import { measureArm } from './measure-arm.ts';

export const pivot: BikePoint = {
  label: 'Swingarm pivot',
  help: 'Centre of the swingarm pivot bolt.',
  applies: always,
  place: ({ pose }) => pose.pivot,
  move: (move) => {
    const { pose, rearAxle } = move.stance;
    return measureArm(move, { axle: inFrame(pose, rearAxle), pivot: inFrame(pose, move.target) });
  },
  placedBy: null,
  staysStill: 'steeringHead',
};
