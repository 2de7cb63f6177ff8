/** The program's taut chain round two sprockets alone: centre distance to links and back. */
import type { ChainLoop } from '../../src/core/drive/chain-loop.ts';
import { chainPath } from '../../src/core/drive/chain-path.ts';

/** Links of the taut chain round sprockets whose centres are `centres` mm apart. */
export function linksAround(loop: ChainLoop, centres: number): number {
  const path = chainPath(loop, { x: 0, y: 0 }, { x: centres, y: 0 }, null);
  if (path === null) throw new Error(`the sprockets overlap at ${centres}`);
  return path.links;
}

/** Centre distance, mm, at which a chain of so many links is taut, halved down to neighbouring numbers. */
export function centresFor(loop: ChainLoop, links: number): number {
  let low = loop.rearRadius + loop.frontRadius + 1e-9;
  // Half the chain laid straight is further than any loop over wheels can reach.
  let high = (links * loop.pitch) / 2;
  if (linksAround(loop, low) > links) throw new Error(`a chain of ${links} links does not go round`);
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return middle;
    if (linksAround(loop, middle) < links) low = middle;
    else high = middle;
  }
}
