/** Every state in which a bike is measured, in the order in which they are offered. */
import type { MeasureState } from './measure-state.ts';

const LIST = [
  {
    key: 'onWheels',
    label: 'On its wheels',
    help: 'On level floor, held upright, with nobody on it. Bounce both ends and let it settle.',
    fork: 'loaded',
    arm: 'loaded',
    frontOnFloor: true,
    rearOnFloor: true,
    weighed: true,
  },
  {
    key: 'riderOn',
    label: 'Rider on',
    help: 'On level floor with the rider seated in riding gear, feet up, a helper at the bars.',
    fork: 'rider',
    arm: 'rider',
    frontOnFloor: true,
    rearOnFloor: true,
    weighed: false,
  },
  {
    key: 'rearStand',
    label: 'Rear wheel on a paddock stand',
    help: 'Lifted by the swingarm at the axle, so the suspension stays as it is on the wheels. Front wheel on the floor.',
    fork: 'loaded',
    arm: 'loaded',
    frontOnFloor: true,
    rearOnFloor: false,
    weighed: false,
  },
  {
    key: 'frameHeld',
    label: 'Frame held up, rear hanging',
    help: 'On the centre stand, a frame stand or a hoist, so that the rear suspension hangs. Front wheel on the floor.',
    fork: 'half',
    arm: 'hanging',
    frontOnFloor: true,
    rearOnFloor: false,
    weighed: false,
  },
  {
    key: 'bothHanging',
    label: 'Both ends hanging',
    help: 'Frame on a lift or hoist that cannot tip, a helper holding it, both wheels off the floor, so that fork and rear suspension are topped out.',
    fork: 'hanging',
    arm: 'hanging',
    frontOnFloor: false,
    rearOnFloor: false,
    weighed: false,
  },
  {
    key: 'frontRaised',
    label: 'Front raised for weighing',
    help: 'Front wheel on a block, rear wheel on the scale, suspension tied so that it keeps its length.',
    fork: 'loaded',
    arm: 'loaded',
    frontOnFloor: false,
    rearOnFloor: true,
    weighed: true,
  },
  {
    key: 'rearRaised',
    label: 'Rear raised for weighing',
    help: 'Rear wheel on a block, front wheel on the scale, suspension tied so that it keeps its length.',
    fork: 'loaded',
    arm: 'loaded',
    frontOnFloor: true,
    rearOnFloor: false,
    weighed: true,
  },
  {
    key: 'makersPosture',
    label: 'As in the papers',
    help: 'The posture the maker gives rake, trail and wheelbase in, which papers seldom name.',
    fork: 'makers',
    arm: 'makers',
    frontOnFloor: true,
    rearOnFloor: true,
    weighed: false,
  },
] as const satisfies readonly MeasureState[];

export type MeasureStateKey = (typeof LIST)[number]['key'];

export const MEASURE_STATES: readonly (MeasureState & { readonly key: MeasureStateKey })[] = LIST;

const BY_KEY = Object.fromEntries(LIST.map((state) => [state.key, state])) as Readonly<
  Record<MeasureStateKey, MeasureState>
>;

export function measureStateOf(key: MeasureStateKey): MeasureState {
  return BY_KEY[key];
}
