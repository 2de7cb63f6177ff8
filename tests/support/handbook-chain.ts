/** The handbook's form of the chain length, which the tests hold beside the program's exact one. */
import type { ChainLoop } from '../../src/core/drive/chain-loop.ts';

/**
 * The handbook's length in links: 2C + (N + n)/2 + ((N − n)/2π)²/C with C the centre distance in pitches. An
 * approximation: the runs are taken short by a series and the wraps as if the pitch circle were N·p round.
 */
export function handbookLinks({ pitch, frontTeeth, rearTeeth }: ChainLoop, centres: number): number {
  const inPitches = centres / pitch;
  const spread = (rearTeeth - frontTeeth) / (2 * Math.PI);
  return 2 * inPitches + (rearTeeth + frontTeeth) / 2 + (spread * spread) / inPitches;
}

/** The handbook's centre distance in mm for a number of links, the same form turned round. */
export function handbookCentres({ pitch, frontTeeth, rearTeeth }: ChainLoop, links: number): number {
  const straight = links - (rearTeeth + frontTeeth) / 2;
  const spread = (rearTeeth - frontTeeth) / (2 * Math.PI);
  return (pitch * (straight + Math.sqrt(straight * straight - 8 * spread * spread))) / 4;
}
