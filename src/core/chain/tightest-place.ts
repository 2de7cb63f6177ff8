/** The place in the travel at which the chain is tightest. */
import { refuse } from '../numeric/refusal.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import { withAxleAt } from '../linkage/suspension.ts';
import type { ChainLoop } from '../drive/chain-loop.ts';
import { highestBetween } from '../numeric/highest-between.ts';
import { chainAt, type ChainMachine } from '../standing/chain-in-frame.ts';

export interface TightestPlace {
  readonly ok: true;
  /** Rise of the rear axle from hanging, mm. */
  readonly rearTravel: number;
  /** Length of a taut chain there, in links. */
  readonly links: number;
  /** `inLine`: axle, pivot and countershaft in one line; `end` of the travel; `onGuide`: searched, since the chain lies on a guide on the way. */
  readonly found: 'inLine' | 'end' | 'onGuide';
}

/** Places looked at through the travel when the chain lies on a guide, and then narrowed between two. */
const PLACES = 33;

/**
 * The rear travel at which a taut chain is longest, the axle staying `axlePosition` mm back in its slot. A free chain
 * is tightest where countershaft, pivot and axle are in one line, pivot between (closed form), or at the end of the
 * travel nearest to that. A chain that lies on a guide somewhere is searched (grid and golden section).
 */
export function tightestPlace(
  machine: ChainMachine,
  loop: ChainLoop,
  axlePosition: number,
): TightestPlace | NoLinkage {
  const { countershaft } = machine.places;
  const rear = withAxleAt(machine.rear, axlePosition);
  const { arm } = rear;
  const travelAt = (angle: number): number => arm * (rear.toppedOutSine - Math.sin(angle + rear.framePitch));
  const inLine = travelAt(Math.atan2(countershaft.y, countershaft.x));
  const reached = inLine > 0 && inLine < rear.wheelTravel;
  const candidates = [0, rear.wheelTravel, ...(reached ? [inLine] : [])];
  let best: TightestPlace | null = null;
  for (const rearTravel of candidates) {
    const path = chainAt(machine, loop, rearTravel, axlePosition);
    if ('ok' in path) return path;
    if (best === null || path.links > best.links)
      best = { ok: true, rearTravel, links: path.links, found: rearTravel === inLine ? 'inLine' : 'end' };
  }
  if (best === null) return refuse('inputNotANumber');
  if (!touchesGuide(machine, loop, axlePosition)) return best;
  const found = highestBetween(
    (rearTravel) => {
      const path = chainAt(machine, loop, rearTravel, axlePosition);
      return 'ok' in path ? NaN : path.links;
    },
    0,
    rear.wheelTravel,
    PLACES,
  );
  if (found.status !== 'found' || found.value <= best.links) return best;
  return { ok: true, rearTravel: found.x, links: found.value, found: 'onGuide' };
}

function touchesGuide(machine: ChainMachine, loop: ChainLoop, axlePosition: number): boolean {
  if (machine.guideRadius === null && machine.lowerGuideRadius === null) return false;
  for (let i = 0; i < PLACES; i++) {
    const rearTravel = (machine.rear.wheelTravel * i) / (PLACES - 1);
    const path = chainAt(machine, loop, rearTravel, axlePosition);
    if (!('ok' in path) && (path.onGuide || path.underGuide)) return true;
  }
  return false;
}
