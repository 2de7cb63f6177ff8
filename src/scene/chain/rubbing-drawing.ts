/** Where a chain that lies over or under the swingarm pivot rubs on its guide: the worn stretch, and the words beside it. */
import { driveNoun } from '../../core/parts/drive-noun.ts';
import type { Stance } from '../../core/standing/stance.ts';
import type { Circle, Tangent } from '../../core/plane/circle.ts';
import { drivePlaces, lowerRun, upperRun } from './chain-drawing.ts';
import { PLATE_HALF } from './chain-plates.ts';
import type { WantedLabel } from '../shapes/label-placing.ts';
import { pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

/** How far from the guide its words begin to look for a place, in text sizes: clear of the chain. */
const WORDS_AWAY = 2.5;

/** The stretch of a guide's face that a bent run lies on. Ground frame, radians. */
interface Rubbed extends Circle {
  readonly side: 'over' | 'under';
  readonly middle: number;
  readonly half: number;
  readonly face: number;
}

/** What the chain rubs on over the pivot and, when it is pulled tight, under it; empty while it runs clear. */
function rubbed(standing: Stance, pitch: number): Rubbed[] {
  const places = drivePlaces(standing);
  const { guide, lowerGuide } = places;
  return [
    ...stretch('over', guide, upperRun(places), pitch),
    ...stretch('under', lowerGuide, lowerRun(places), pitch),
  ];
}

function stretch(
  side: Rubbed['side'],
  guide: Circle | null,
  [behind, ahead]: readonly Tangent[],
  pitch: number,
): Rubbed[] {
  if (guide === null || behind === undefined || ahead === undefined) return [];
  const angle = (p: { x: number; y: number }) => Math.atan2(p.y - guide.centre.y, p.x - guide.centre.x);
  const from = angle(behind.to);
  const to = angle(ahead.from);
  // A link does not bend, so the chain lies on the guide over one pitch at the least.
  const half = Math.max(Math.abs(from - to), pitch / guide.radius) / 2;
  return [
    {
      ...guide,
      side,
      middle: (from + to) / 2,
      half,
      face: Math.max(4, guide.radius - PLATE_HALF * pitch),
    },
  ];
}

/** The rubbed stretch of the guide's face, lit; nothing while the chain runs clear. */
export function rubbingShapes(standing: Stance, pitch: number): Shape[] {
  return rubbed(standing, pitch).map(({ centre, middle, half, face }) =>
    pen()
      .arc(centre.x, centre.y, face, middle + half, middle - half)
      .shape('rubbing'),
  );
}

/** Says on the side view that the chain rubs; no words while it runs clear. */
export function rubbingLabels(standing: Stance, pitch: number, sizePx: number): WantedLabel[] {
  const { Loop, slider } = driveNoun(standing.machine.driveKind);
  return rubbed(standing, pitch).map(({ side, centre, middle, radius }) => ({
    role: 'rubbing',
    text: side === 'over' ? `${Loop} rubs on the ${slider}` : `${Loop} rubs under the pivot`,
    at: { x: centre.x + radius * Math.cos(middle), y: centre.y + radius * Math.sin(middle) },
    spot: side === 'over' ? 'above' : 'below',
    startPx: { x: 0, y: (side === 'over' ? -1 : 1) * WORDS_AWAY * sizePx },
    sizePx,
  }));
}
