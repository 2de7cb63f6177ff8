/** Writes a set of values into a bike and its setup, as they are saved. */
import type { Setup } from '../../adjusters/setup.ts';
import { asStored } from '../../chassis/pivot-move.ts';
import { hangShock } from '../../linkage/hang-shock.ts';
import { mapBolts } from '../../linkage/map-bolts.ts';
import { takeAdjustersOut } from '../../linkage/redraw-links.ts';
import { adjustersIn } from '../../linkage/rear-layout-of.ts';
import type { Swingarm } from '../../parts/bike.ts';
import { eachFramePlace, type FramePlaceKey } from '../../parts/frame-places.ts';
import { eachTouchPart } from '../../parts/touch-parts.ts';
import { tyreDiameter, type Tyre } from '../../parts/tyre.ts';
import { sinkMeasuredWith } from '../../standing/tyres.ts';
import { rotate, type Point } from '../../plane/point.ts';
import { degrees, radians } from '../../units/convert.ts';
import { settingOf, type Posture } from './hold-bike.ts';
import type { StartingBike } from './starting-bike.ts';
import { unsprungMoment } from './whole-mass.ts';

/** A radius this near to that of the tyre's size is that size, mm. */
const SAME_RADIUS = 1e-6;

/**
 * The bike whose posture this is, with the setup it was measured with: the adjusters stay where they stand, a chain no
 * longer places the axle, and the travel set by hand is that of the posture. Null where its links cannot be drawn.
 */
export function buildBike(posture: Posture): StartingBike | null {
  const { origin, get, pivot, arm, armAngle, rake, axleLead, head } = posture;
  const { bike, setup, machine, pose } = origin;
  const inFrame = (p: Point): Point => rotate(p, -pose.pitch);
  const hangs = settingOf(posture, 'hanging', 'hanging');
  const frontTravel = Math.max(0, -hangs.fork);
  const axisAngle = rake - pose.pitch;
  const drawnAngle = axisAngle - radians(setup.headAngleCupsDeg);
  const half = get('headTubeLength') / 2;
  const headInFrame = inFrame({ x: head.x - pivot.x, y: head.y - pivot.y });
  const { rear } = machine;
  const axlePosition = rear.arm - rear.slotFrontArm;
  const armInFrame = armAngle - pose.pitch;
  const hanging = armInFrame + hangs.arm;
  const rearTravel = arm * (Math.sin(hanging + rear.framePitch) - Math.sin(armInFrame + rear.framePitch));
  const swingarm = hangArm(posture, arm - axlePosition, hanging);
  const sprung = sprungPart(posture);
  if (swingarm === null || sprung === null) return null;
  const placeOf = (key: FramePlaceKey): Point =>
    key === 'sprungCentre' ? sprung.centre : { x: get(`${key}X`), y: get(`${key}Y`) };
  return {
    bike: {
      ...bike,
      frame: {
        ...bike.frame,
        ...eachFramePlace((key) => asStored(inFrame(placeOf(key)), setup)),
        touching: eachTouchPart((key) => {
          const { halfWidth, ...stored } = bike.frame.touching[key];
          if (halfWidth === null) return { ...stored, halfWidth };
          return { ...asStored(inFrame({ x: get(`${key}X`), y: get(`${key}Y`) }), setup), halfWidth };
        }),
        steeringHead: asStored(
          {
            x: headInFrame.x - half * (Math.sin(drawnAngle) - Math.sin(axisAngle)),
            y: headInFrame.y + half * (Math.cos(drawnAngle) - Math.cos(axisAngle)),
          },
          setup,
        ),
        axisAngleDeg: degrees(drawnAngle),
        headTubeLength: get('headTubeLength'),
        sprungMass: sprung.mass,
      },
      fork: {
        ...bike.fork,
        length: get('legLength') + frontTravel - setup.forkExtenders + setup.forkTubes,
        axleLead,
      },
      swingarm,
    },
    setup: {
      ...setup,
      frontTyre: tyreOf(setup.frontTyre, get('frontRadius') - sinkMeasuredWith(bike.frontWheel)),
      rearTyre: tyreOf(setup.rearTyre, get('rearRadius') - sinkMeasuredWith(bike.rearWheel)),
      axlePosition,
      chainLinks: null,
      frontTravelUsed: frontTravel,
      rearTravelUsed: Math.max(0, rearTravel),
    },
  };
}

/** What the springs carry without fuel: mass, kg, and centre from the pivot along the floor; null where nothing is left. */
function sprungPart({ origin, get, rearRadius, pivot, armAngle, frontAxle }: Posture): SprungPart | null {
  const { bike, setup } = origin;
  const rear = { x: 0, y: rearRadius };
  const unsprung = unsprungMoment(bike, { front: frontAxle, rear, pivot, armAngle });
  const whole = get('mass');
  const fuel = setup.fuelMass;
  const mass = whole - unsprung.mass - fuel;
  if (!(mass > 0)) return null;
  const left = (all: number, less: number, tank: number, from: number): number =>
    (whole * (from + all) - less - fuel * (from + tank)) / mass - from;
  return {
    mass,
    centre: {
      x: left(get('centreX'), unsprung.x, get('tankX'), pivot.x),
      y: left(get('centreY'), unsprung.y, get('tankY'), pivot.y),
    },
  };
}

interface SprungPart {
  readonly mass: number;
  readonly centre: Point;
}

/** The swingarm `length` mm long that hangs at an angle in the frame with the adjusters as they stand. */
function hangArm({ origin, layout: drawnLinks }: Posture, length: number, hanging: number): Swingarm | null {
  const { bike, setup, machine, pose } = origin;
  const { swingarm } = bike;
  const { rear } = machine;
  if (rear.kind === 'table') {
    const { deliveredSine, toppedOutSine, tableArm, tablePitch } = rear.table;
    const sine = Math.sin(hanging + tablePitch) + (tableArm * (deliveredSine - toppedOutSine)) / length;
    if (!(Math.abs(sine) < 1)) return null;
    return { ...swingarm, length, toppedOutAngleDeg: degrees(Math.asin(sine) - tablePitch) };
  }
  const layout = drawnLinks();
  if (layout === null) return null;
  const drawn = radians(layout.drawnAngleDeg) - pose.pitch;
  const turned = mapBolts(layout, { onFrame: (p) => rotate(p, -pose.pitch), onArm: (p) => p });
  const hung = hangShock({ ...turned, drawnAngleDeg: degrees(drawn) }, hanging, setup.shockLength);
  if ('ok' in hung) return null;
  const links = takeAdjustersOut(hung, drawn, adjustersIn(setup));
  return 'ok' in links ? null : { ...swingarm, length, links };
}

function tyreOf(tyre: Tyre, radius: number): Tyre {
  const size = tyreDiameter(tyre);
  return size.ok && Math.abs(size.value / 2 - radius) <= SAME_RADIUS ? tyre : { diameter: 2 * radius };
}

/** The setup with nobody and nothing on the bike, as it stands while it is measured. */
export function withoutRider(setup: Setup): Setup {
  return { ...setup, riderMass: 0, passengerMass: 0, loadMass: 0 };
}
