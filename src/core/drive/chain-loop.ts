/** Two sprockets with a chain, or two pulleys with a toothed belt: what the loop's length depends on. */
import type { Refusal } from '../numeric/refusal.ts';
import { LEAST_PITCH, MOST_PITCH, pitchPossible, pitchRadius, teethPossible } from './sprocket.ts';

/** A loop over two toothed wheels, mm. Radii are those of the pitch line, on which the length is counted. */
export interface ChainLoop {
  readonly pitch: number;
  readonly frontTeeth: number;
  readonly rearTeeth: number;
  readonly frontRadius: number;
  readonly rearRadius: number;
}

/**
 * The loop of a roller chain. A worn chain, longer by `stretchPercent`, lies further out on the teeth, still one
 * link a tooth: its pins lie on the pitch circle of the longer pitch.
 */
export function chainLoop(
  frontTeeth: number,
  rearTeeth: number,
  pitch: number,
  stretchPercent = 0,
): ChainLoop {
  const worn = pitch * (1 + stretchPercent / 100);
  return {
    pitch: worn,
    frontTeeth,
    rearTeeth,
    frontRadius: pitchRadius(frontTeeth, worn),
    rearRadius: pitchRadius(rearTeeth, worn),
  };
}

/**
 * Pitch radius of a toothed belt's pulley, in the unit of the pitch: its pitch line is bent round, teeth × pitch / 2π.
 * Example: teeth 30, pitch 11 mm → 52.521 mm.
 */
export function beltPitchRadius(teeth: number, pitch: number): number {
  return (teeth * pitch) / (2 * Math.PI);
}

/** The loop of a toothed belt; its length is counted in belt teeth as a chain's in links. */
export function beltLoop(frontTeeth: number, rearTeeth: number, pitch: number): ChainLoop {
  return {
    pitch,
    frontTeeth,
    rearTeeth,
    frontRadius: beltPitchRadius(frontTeeth, pitch),
    rearRadius: beltPitchRadius(rearTeeth, pitch),
  };
}

/** Why two wheels and a pitch make no loop, with the number in the way. */
export type NoLoop = Refusal<'teethImpossible' | 'chainPitchImpossible', { readonly found: number }>;

/** Why these teeth and this pitch cannot be a loop; null when they can. */
export function whyNoLoop(frontTeeth: number, rearTeeth: number, pitch: number): NoLoop | null {
  if (!teethPossible(frontTeeth))
    return { ok: false, reason: 'teethImpossible', end: 'front', found: frontTeeth };
  if (!teethPossible(rearTeeth))
    return { ok: false, reason: 'teethImpossible', end: 'rear', found: rearTeeth };
  if (!pitchPossible(pitch))
    return {
      ok: false,
      reason: 'chainPitchImpossible',
      found: pitch,
      limit: pitch > MOST_PITCH ? MOST_PITCH : LEAST_PITCH,
    };
  return null;
}
