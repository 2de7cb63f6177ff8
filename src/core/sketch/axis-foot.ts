/** The lower end of the steering axis. */
import { inFrame, onGround } from '../chassis/pose.ts';
import { always, type BikePoint } from './bike-point.ts';
import { axisFootInFrame, measureSteering } from './measure-steering.ts';

export const axisFoot: BikePoint = {
  label: 'Steering axis, lower end',
  help: 'Any second place on the steering axis: the bottom of the steering head.',
  applies: always,
  place: (stance, bike) => onGround(stance.pose, axisFootInFrame(stance, bike.frame.headTubeLength)),
  move: (move) => measureSteering(move, { foot: inFrame(move.stance.pose, move.target) }),
  placedBy: null,
  staysStill: 'countershaft',
};
