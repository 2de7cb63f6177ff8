/** Putting a chain on the bike, or taking it off, with the axle left where it stands. */
import { driveNoun } from '../../core/parts/drive-noun.ts';
import { setAxlePosition } from '../../core/standing/chain-in-frame.ts';
import { setAdjuster, setChain, type Edited } from '../../document/edits.ts';
import type { BikeDocument } from '../../document/document.ts';
import type { Standing } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** Decimals kept of an axle place or slack that is set, mm: rounding far below what anyone can set. */
const KEPT_DECIMALS = 6;

export function keptMm(mm: number): number {
  return Number(mm.toFixed(KEPT_DECIMALS));
}

/** Where the axle stands, mm back from the slot's front; null without a bike. */
export function axlePlace({ problem, live }: Standing): number | null {
  return problem === null && live !== null ? setAxlePosition(live.stance.machine) : null;
}

/**
 * A chain of so many links then places the axle; null leaves the axle where it stands. The chain gets `slack` with the
 * wheel hanging, mm: what is set, unless said otherwise. One entry of the history.
 */
export function takeChain(
  { session, standing }: Pick<Workbench, 'session' | 'standing'>,
  links: number | null,
  slack?: number,
): void {
  const place = axlePlace(standing);
  const edit = (from: BikeDocument): Edited => {
    const set = setAdjuster(from, 'chainSlack', slack ?? from.setup.chainSlack);
    if (!set.ok) return set;
    return setChain(set.value, links, place === null ? from.setup.axlePosition : keptMm(place));
  };
  const { loop, Loop, units } = driveNoun(session.document.bike.drive.kind);
  session.commit(edit, links === null ? `No ${loop} named` : `${Loop} of ${links} ${units}`);
}
