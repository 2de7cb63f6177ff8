/** Where a chain that lies over the swingarm pivot rubs on its guide: the worn stretch, and the words beside it. */
import { driveNoun } from '../../core/parts/drive-noun.ts';
import type { Stance } from '../../core/standing/stance.ts';
import { drivePlaces, upperRun } from './chain-drawing.ts';
import { PLATE_HALF } from './chain-plates.ts';
import type { WantedLabel } from '../shapes/label-placing.ts';
import { pen } from '../shapes/outline.ts';
import type { Shape } from '../shapes/shape.ts';

/** How far above the guide its words begin to look for a place, in text sizes: clear of the chain. */
const WORDS_ABOVE = 2.5;

/** The stretch of the guide's face under the bent upper run; null while the chain runs clear. Ground frame, radians. */
function rubbed(standing: Stance, pitch: number) {
  const places = drivePlaces(standing);
  const { guide } = places;
  const [behind, ahead] = upperRun(places);
  if (guide === null || behind === undefined || ahead === undefined) return null;
  const angle = (p: { x: number; y: number }) => Math.atan2(p.y - guide.centre.y, p.x - guide.centre.x);
  const from = angle(behind.to);
  const to = angle(ahead.from);
  // A link does not bend, so the chain lies on the guide over one pitch at the least.
  const half = Math.max(from - to, pitch / guide.radius) / 2;
  return {
    ...guide,
    middle: (from + to) / 2,
    half,
    face: Math.max(4, guide.radius - PLATE_HALF * pitch),
  };
}

/** The rubbed stretch of the guide's face, lit; nothing while the chain runs clear. */
export function rubbingShapes(standing: Stance, pitch: number): Shape[] {
  const found = rubbed(standing, pitch);
  if (found === null) return [];
  const { centre, middle, half, face } = found;
  return [
    pen()
      .arc(centre.x, centre.y, face, middle + half, middle - half)
      .shape('rubbing'),
  ];
}

/** Says on the side view that the chain rubs; no words while it runs clear. */
export function rubbingLabels(standing: Stance, pitch: number, sizePx: number): WantedLabel[] {
  const found = rubbed(standing, pitch);
  if (found === null) return [];
  const { centre, middle, radius } = found;
  const { Loop, slider } = driveNoun(standing.machine.driveKind);
  const at = { x: centre.x + radius * Math.cos(middle), y: centre.y + radius * Math.sin(middle) };
  return [
    {
      role: 'rubbing',
      text: `${Loop} rubs on the ${slider}`,
      at,
      spot: 'above',
      startPx: { x: 0, y: -WORDS_ABOVE * sizePx },
      sizePx,
    },
  ];
}
