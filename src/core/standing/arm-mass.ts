/** The swingarm's own mass, split between axle and pivot so that weight and inertia stay where they act. */
import type { Suspension } from '../linkage/suspension.ts';
import type { CarriedMass } from './carried-masses.ts';

/** The swingarm with all that is bolted to it, without what moves with the axle: kg, and its centre on the arm, mm. */
export interface ArmMass {
  readonly mass: number;
  /** From the pivot toward the axle, and square above that line. */
  readonly along: number;
  readonly above: number;
}

/** What the split depends on, and what follows from it. */
interface ArmCarrier {
  readonly rear: Suspension;
  /** What moves with the rear axle, kg: wheel, brake and sprocket; without and with its share of the arm. */
  readonly rearWheelMass: number;
  readonly rearUnsprung: number;
  readonly armMass: ArmMass;
  /** The arm's mass times how far its centre lies above the line from pivot to axle, kg·mm: it turns with the arm. */
  readonly armMoment: number;
  readonly carried: readonly CarriedMass[];
}

/**
 * The same machine with its axle where `rear` has it, and the swingarm's mass split anew: its centre `along` mm of an arm
 * `rear.arm` mm long puts along/arm of it on the axle and the rest on the pivot, where the springs carry it; how far it lies
 * above the line turns with the arm. Weight and inertia act on the three as on the arm, because both are the same
 * everywhere on it.
 */
export function withRear<Machine extends ArmCarrier>(machine: Machine, rear: Suspension): Machine {
  const { mass, along, above } = machine.armMass;
  if (mass === 0) return rear === machine.rear ? machine : { ...machine, rear };
  const onAxle = (mass * along) / rear.arm;
  const onPivot: CarriedMass = {
    key: 'swingarm',
    mass: mass - onAxle,
    at: { x: 0, y: 0 },
    height: 0,
    aboard: false,
  };
  return {
    ...machine,
    rear,
    rearUnsprung: machine.rearWheelMass + onAxle,
    armMoment: mass * above,
    carried: [...machine.carried.filter(({ key }) => key !== 'swingarm'), onPivot],
  };
}
