/** The upper end of the steering axis. */
import { inFrame, onGround } from '../chassis/pose.ts';
import { always, type BikePoint } from './bike-point.ts';
import { measureSteering } from './measure-steering.ts';

export const steeringHead: BikePoint = {
  label: 'Steering head',
  help: 'Steering axis at the top of the upper clamp.',
  applies: always,
  place: ({ machine, pose }) => onGround(pose, machine.front.head),
  move: (move) => measureSteering(move, { head: inFrame(move.stance.pose, move.target) }),
  placedBy: null,
  staysStill: 'countershaft',
};
