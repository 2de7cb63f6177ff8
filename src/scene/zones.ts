/** Squat, neutral and lift as areas that can be told apart from the back of a room. */
import type { Stance } from '../core/standing/stance.ts';
import { pen } from './outline.ts';
import { squatConstruction } from './squat-construction.ts';
import type { Role, Shape } from './shape.ts';

/** How far the areas reach ahead of the front tyre, mm, and how far up and down as parts of the load-transfer slope. */
const AHEAD = 170;
const LIFT_REACH = 1.75;
const PRO_SQUAT_REACH = 0.22;
/** How far above its lower edge the lift area's name stands, as a part of the same slope. */
const LIFT_NAME_ABOVE = 0.16;
/** The squat area's name stands low, ahead of where the front tyre has rounded away. */
const PRO_SQUAT_NAME_BELOW = 0.165;
const SQUAT_NAME_ABOVE = 0.065;

export type Zone = 'squat' | 'neutral' | 'lift' | 'proSquat';

/** Where the areas end to the right, ground frame, mm. */
export function zonesEnd(standing: Stance): number {
  return standing.pose.wheelbase + standing.machine.frontRadius + AHEAD;
}

/** The zone a bike's squat line runs in; null without a load-transfer line. `band` is ± per cent of anti-squat. */
export function zoneOf(standing: Stance, band: number): Zone | null {
  const { squatSlope, loadPoint } = squatConstruction(standing);
  if (loadPoint === null) return null;
  if (squatSlope < 0) return 'proSquat';
  const percent = (100 * squatSlope * loadPoint.x) / loadPoint.y;
  if (Math.abs(percent - 100) <= band) return 'neutral';
  return percent < 100 ? 'squat' : 'lift';
}

/** The areas from back to front, each a wedge from the rear patch. */
export function zoneShapes(standing: Stance, band: number): Shape[] {
  const { loadPoint } = squatConstruction(standing);
  if (loadPoint === null) return [];
  const x = zonesEnd(standing);
  const rise = (loadPoint.y / loadPoint.x) * x;
  const low = rise * (1 - band / 100);
  const high = rise * (1 + band / 100);
  const wedge = (role: Role, from: number, to: number): Shape =>
    pen().move(0, 0).line(x, from, x, to).close().shape(role);
  return [
    wedge('proSquatZone', -PRO_SQUAT_REACH * rise, 0),
    wedge('squatZone', 0, low),
    wedge('neutralZone', low, high),
    wedge('liftZone', high, LIFT_REACH * rise),
  ];
}

/** Where the squat line runs, in words for those who do not see the areas; empty without a load-transfer line. */
export function zoneSentence(standing: Stance, band: number): string {
  const zone = zoneOf(standing, band);
  return zone === null ? '' : ZONE_SENTENCES[zone];
}

const ZONE_SENTENCES: Readonly<Record<Zone, string>> = {
  squat: 'The squat line runs in the squat zone: the rear squats on the gas.',
  neutral: 'The squat line runs in the neutral zone: the rear neither squats nor lifts on the gas.',
  lift: 'The squat line runs in the lift zone: the rear lifts on the gas.',
  proSquat: 'The squat line runs in the pro-squat zone: the drive itself pulls the rear down.',
};

/** The middle of each area's right edge, for its name. */
export function zoneNamePlaces(standing: Stance, band: number): { zone: Zone; x: number; y: number }[] {
  const { loadPoint } = squatConstruction(standing);
  if (loadPoint === null) return [];
  const x = zonesEnd(standing);
  const rise = (loadPoint.y / loadPoint.x) * x;
  const liftFrom = rise * (1 + band / 100);
  return [
    { zone: 'lift', x, y: liftFrom + LIFT_NAME_ABOVE * rise },
    { zone: 'neutral', x, y: rise },
    { zone: 'squat', x, y: SQUAT_NAME_ABOVE * rise },
    { zone: 'proSquat', x, y: -PRO_SQUAT_NAME_BELOW * rise },
  ];
}
