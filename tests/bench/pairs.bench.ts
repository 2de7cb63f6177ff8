/** How long a thousand sprocket pairs take, each with its chain, its axle place and the bike stood anew. */
import { sprocketPairs, type PairsAsked } from '../../src/core/effects/sprocket-pairs.ts';
import { RIDE_STATES } from '../../src/core/riding/states/all-ride-states.ts';
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';
import { ANY_CHAIN } from '../support/pairs-asked.ts';
import { plainBike, plainSetup } from '../support/plain-bike.ts';
import { benchTable, type BenchRow } from './bench-table.ts';

/** Goal for 1000 pairs, ms. */
const GOAL_MS = 50;
/**
 * Runs before the clock counts, and runs of which least and median are printed: others may be at work on the machine.
 */
const LONG = { warmUp: 5, runs: 41 };
const SHORT = { warmUp: 0, runs: 1 };

interface Took {
  readonly least: number;
  readonly median: number;
}

export default function pairs(short: boolean): string[] {
  const { warmUp, runs } = short ? SHORT : LONG;
  /** Time of a thousand pairs, ms, each run with a new bike. */
  const took = (asked: (run: number) => PairsAsked): Took => {
    const times: number[] = [];
    for (let run = -warmUp; run < runs; run++) {
      const began = performance.now();
      const found = sprocketPairs(asked(Math.abs(run)));
      const spent = performance.now() - began;
      if ('ok' in found) throw new Error(found.reason);
      if (!found.every((pair) => pair.travel !== null)) throw new Error('Not every pair stands');
      if (run >= 0) times.push((1000 * spent) / found.length);
    }
    times.sort((a, b) => a - b);
    return { least: times[0], median: times[(runs - 1) / 2] };
  };
  const [{ bike, setup }] = DEMO_BIKES;
  const all = {
    ...ANY_CHAIN,
    front: { least: 11, most: 20 },
    rear: { least: 21, most: 120 },
    leastFront: 11,
  };
  const plain = took((run) => ({
    bike: plainBike,
    setup: { ...plainSetup, shockLength: run / 10 },
    ride: { front: 30, rear: 20 + (run % 7) },
    ...all,
  }));
  const rows = [rowOf('a bike without springs, travel given', plain, plain)];
  for (const { key: ride } of RIDE_STATES) {
    const each = took((run) => ({
      bike,
      setup: { ...setup, forkTubes: setup.forkTubes + run / 20 },
      ride,
      ...all,
    }));
    rows.push(rowOf(`a bike with springs and links, ${ride}`, each, plain));
  }
  return benchTable(rows);
}

function rowOf(what: string, { least, median }: Took, plain: Took): BenchRow {
  return {
    what: `1000 pairs of ${what}; least ${least.toFixed(1)} ms`,
    figure: median,
    unit: 'ms',
    goal: { most: GOAL_MS },
    // How much of the time the equilibrium takes: the bike without springs stands at once.
    peer: { name: 'without springs', figure: plain.median },
  };
}
