/** The shock bike as rigid bodies in a general physics engine, shaken down until it stands still. */
import {
  Circle,
  DistanceJoint,
  Edge,
  PrismaticJoint,
  RevoluteJoint,
  Settings,
  Vec2,
  World,
  type Body,
} from 'planck';
import { onGround } from '../../src/core/chassis/pose.ts';
import type { SpringSet } from '../../src/core/standing/spring-set.ts';
import type { Stance, Travel } from '../../src/core/standing/stance.ts';
import { boltDistance, LOWER_BOLT, UPPER_BOLT } from './shock-bike.ts';

export interface EngineForces {
  /** Along the ground, g; modelled as leaning gravity, which is the same for a bike that stands still. */
  readonly acceleration: number;
  /** Weight in the bike's plane against its weight upright: 1/cos of the lean. */
  readonly pressed: number;
  /** What holds the bike against that: the chain's upper run, its lower run, a shaft's torque arm, or the brake of one wheel. */
  readonly held: 'chain' | 'closedThrottle' | 'torqueArm' | 'frontBrake' | 'rearBrake' | 'nothing';
  /** A wall before the front wheel, and the pull of the upper run that presses the bike against it, N; none when left out. */
  readonly wallPull?: number;
}

export interface EngineRest {
  readonly travel: Travel;
  /** Fastest that any part still moves, m/s. */
  readonly speed: number;
}

/** The engine counts in metres; its slop is set from 5 mm down to a hundredth. */
const SLOP = 1e-5;
const STEP = 1 / 2000;
const SECONDS = 6;
const GRAVITY = 9.80665;
const CHAIN_STIFFNESS = 4e5;
const CHAIN_DAMPING = 6000;
const FORK_DAMPING = 2500;
const SHOCK_DAMPING = 12000;
const GRIP = 30;
/** Of a shaft's housing, kg. */
const HOUSING_MASS = 2;

const metres = (x: number, y: number): Vec2 => new Vec2(x / 1000, y / 1000);

/**
 * Lets the bike settle from the stance given. Frame, swingarm, lower legs and both wheels are bodies; pivots, fork
 * and tyre contacts are the engine's own joints and contacts; shock, fork springs and chain are forces between two
 * points. Half of each unsprung mass is the wheel, half is on what holds it, both centred on the axle.
 */
export function settledByEngine(start: Stance, springs: SpringSet, forces: EngineForces): EngineRest {
  const slop = Settings.linearSlop;
  Settings.linearSlop = SLOP;
  try {
    return settle(start, springs, forces);
  } finally {
    Settings.linearSlop = slop;
  }
}

function settle(start: Stance, springs: SpringSet, forces: EngineForces): EngineRest {
  const { machine, pose } = start;
  const world = new World({
    gravity: new Vec2(-forces.acceleration * GRAVITY, -forces.pressed * GRAVITY),
    allowSleep: false,
  });
  const ground = world.createBody();
  ground.createFixture({
    shape: new Edge(new Vec2(-5, 0), new Vec2(10, 0)),
    friction: GRIP,
    filterCategoryBits: 1,
  });

  const pivot = metres(pose.pivot.x, pose.pivot.y);
  const rearAxle = metres(start.rearAxle.x, start.rearAxle.y);
  const frontAxle = metres(start.frontAxle.x, start.frontAxle.y);
  const body = (at: Vec2, angle: number, mass: number, centre: Vec2, inertia: number): Body => {
    const made = world.createDynamicBody({ position: at, angle });
    made.setMassData({ mass, center: centre, I: inertia + mass * Vec2.dot(centre, centre) });
    return made;
  };
  const onFrame = machine.carried.filter(({ key }) => key === 'sprung' || key === 'rider');
  const frameMass = onFrame.reduce((sum, { mass }) => sum + mass, 0);
  const frame = body(
    pivot,
    pose.pitch,
    frameMass,
    metres(
      onFrame.reduce((sum, { mass, at }) => sum + mass * at.x, 0) / frameMass,
      onFrame.reduce((sum, { mass, at }) => sum + mass * at.y, 0) / frameMass,
    ),
    25,
  );
  // The arm's own x axis runs from the pivot back to the axle.
  const armLength = machine.rear.arm / 1000;
  const arm = body(
    pivot,
    Math.PI + start.swingarmAngle,
    machine.rearUnsprung / 2,
    new Vec2(armLength, 0),
    0.3,
  );
  const legs = body(frontAxle, 0, machine.frontUnsprung / 2, new Vec2(0, 0), 0.3);
  const wheel = (at: Vec2, mass: number, radius: number): Body => {
    const made = world.createDynamicBody({ position: at });
    made.createFixture({
      shape: new Circle(radius / 1000),
      density: 1,
      friction: GRIP,
      filterMaskBits: 1,
      filterCategoryBits: 2,
    });
    made.setMassData({ mass, center: new Vec2(0, 0), I: 0.4 });
    return made;
  };
  const rearWheel = wheel(rearAxle, machine.rearUnsprung / 2, machine.rearRadius);
  const frontWheel = wheel(frontAxle, machine.frontUnsprung / 2, machine.frontRadius);

  world.createJoint(new RevoluteJoint({}, frame, arm, pivot));
  const brake = { enableMotor: true, motorSpeed: 0, maxMotorTorque: 1e5 };
  world.createJoint(new RevoluteJoint(forces.held === 'rearBrake' ? brake : {}, arm, rearWheel, rearAxle));
  if (forces.held === 'torqueArm') holdHousing(world, start, { frame, arm, rearWheel }, body);
  world.createJoint(
    new RevoluteJoint(forces.held === 'frontBrake' ? brake : {}, legs, frontWheel, frontAxle),
  );
  const leg = machine.front.legLean + pose.pitch;
  const slide = new PrismaticJoint({}, frame, legs, frontAxle, new Vec2(-Math.sin(leg), Math.cos(leg)));
  world.createJoint(slide);

  const { fork, shock } = springs;
  const fullBolts = boltDistance(Math.asin(machine.rear.toppedOutSine));
  const upperBolt = metres(UPPER_BOLT.x, UPPER_BOLT.y);
  // Square above the arm is to the right of the way from pivot to axle.
  const lowerBolt = metres(LOWER_BOLT.x, -LOWER_BOLT.y);
  const { wallPull } = forces;
  if (wallPull !== undefined) standWall(ground, start);
  const chain = chainBetween(start, frame, rearWheel, forces.held === 'closedThrottle' ? -1 : 1, wallPull);
  for (let time = 0; time < SECONDS; time += STEP) {
    const used = start.travel.front + 1000 * slide.getJointTranslation();
    const along = frame.getWorldVector(slide.getLocalAxisA());
    const forkPush = fork.legs * fork.rate * (fork.preload + used) + FORK_DAMPING * slide.getJointSpeed();
    pull(legs, frame, legs.getPosition(), along, -forkPush);

    const upper = frame.getWorldPoint(upperBolt);
    const lower = arm.getWorldPoint(lowerBolt);
    const way = Vec2.sub(upper, lower);
    const length = way.normalize();
    const closing = Vec2.dot(way, Vec2.sub(speedAt(arm, lower), speedAt(frame, upper)));
    const stroke = fullBolts - 1000 * length;
    const shockPush = shock.rate * (shock.preload + stroke) + SHOCK_DAMPING * closing;
    pull(arm, frame, lower, way, -shockPush);

    if (forces.held === 'chain' || forces.held === 'closedThrottle') chain();
    world.step(STEP, 40, 20);
  }
  const sine = Math.sin(arm.getAngle() - Math.PI - frame.getAngle());
  return {
    travel: {
      front: start.travel.front + 1000 * slide.getJointTranslation(),
      rear: machine.rear.arm * (machine.rear.toppedOutSine - sine),
    },
    speed: Math.max(
      ...[frame, arm, legs, rearWheel, frontWheel].map((each) => each.getLinearVelocity().length()),
    ),
  };
}

/** A shaft's housing as one more body on the rear axle, its gears locked, with a rod from its bolt to the frame. */
function holdHousing(
  world: World,
  start: Stance,
  { frame, arm, rearWheel }: { readonly frame: Body; readonly arm: Body; readonly rearWheel: Body },
  body: (at: Vec2, angle: number, mass: number, centre: Vec2, inertia: number) => Body,
): void {
  const hold = start.torqueHold;
  if (hold === null) throw new Error('The bike has no torque arm');
  const axle = metres(start.rearAxle.x, start.rearAxle.y);
  const bolt = onGround(start.pose, hold.bolt);
  const anchor = onGround(start.pose, hold.anchor);
  const housing = body(axle, 0, HOUSING_MASS, new Vec2(0, 0), 0.1);
  // What the housing weighs is taken from the wheel, which sits on the same axle.
  rearWheel.setMassData({ mass: rearWheel.getMass() - HOUSING_MASS, center: new Vec2(0, 0), I: 0.4 });
  world.createJoint(new RevoluteJoint({}, arm, housing, axle));
  world.createJoint(
    new RevoluteJoint({ enableMotor: true, motorSpeed: 0, maxMotorTorque: 1e5 }, housing, rearWheel, axle),
  );
  world.createJoint(
    new DistanceJoint({}, housing, frame, metres(bolt.x, bolt.y), metres(anchor.x, anchor.y)),
  );
}

/** An upright wall without friction where the front tyre touches it. */
function standWall(ground: Body, { frontAxle: { x }, machine }: Stance): void {
  const at = (x + machine.frontRadius) / 1000;
  ground.createFixture({
    shape: new Edge(new Vec2(at, -1), new Vec2(at, 3)),
    friction: 0,
    filterCategoryBits: 1,
  });
}

/** Draws `a` along `way` and `b` against it with one force, in one line through `at`. */
function pull(a: Body, b: Body, at: Vec2, way: Vec2, force: number): void {
  a.applyForce(Vec2.mul(way, force), at, true);
  b.applyForce(Vec2.mul(way, -force), at, true);
}

function speedAt(body: Body, at: Vec2): Vec2 {
  return body.getLinearVelocityFromWorldPoint(at);
}

/** The chain's upper (1) or lower (−1) run: a stiff string from a mark on the rear sprocket to one on the front, which stands still; or a run that a clutch pulls with one force. */
function chainBetween(
  start: Stance,
  frame: Body,
  rearWheel: Body,
  side: 1 | -1,
  clutchPull?: number,
): () => void {
  const { machine } = start;
  const rear = machine.rearSprocketRadius / 1000;
  const front = machine.frontSprocketRadius / 1000;
  const countershaft = metres(machine.places.countershaft.x, machine.places.countershaft.y);
  let slack: number | null = null;
  let before = 0;
  return () => {
    const ahead = frame.getWorldPoint(countershaft);
    const behind = rearWheel.getPosition();
    const between = Vec2.sub(ahead, behind);
    const distance = between.length();
    const run = Math.atan2(between.y, between.x) - side * Math.asin((rear - front) / distance);
    const straight = Math.sqrt(distance * distance - (rear - front) ** 2);
    const length = straight + side * (rear * (rearWheel.getAngle() - run) + front * (run - frame.getAngle()));
    slack ??= length;
    const stretch = length - slack;
    const tension =
      clutchPull ?? Math.max(0, CHAIN_STIFFNESS * stretch + (CHAIN_DAMPING * (stretch - before)) / STEP);
    before = stretch;
    const touch = new Vec2(behind.x - side * rear * Math.sin(run), behind.y + side * rear * Math.cos(run));
    pull(rearWheel, frame, touch, new Vec2(Math.cos(run), Math.sin(run)), tension);
  };
}
