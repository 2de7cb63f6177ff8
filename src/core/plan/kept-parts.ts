/** Parts of a machine that are made anew only once an adjuster that they follow from has turned. */
import type { PivotMove } from '../chassis/pivot-move.ts';
import type { Bike } from '../parts/bike.ts';
import { NEW_LAWS, type SpringLaws } from '../springs/sprung-machine.ts';
import { NEW_PARTS, type MachineParts, type PartMaker } from '../standing/machine-parts.ts';

/**
 * A maker that gives back the part it made last while bike and adjusters stay: `isSame` compares those that `make` reads.
 * A search turns a few adjusters and asks a million times. A list of their names to go through would cost more than
 * making the part anew.
 */
function kept<Read, Part>(
  make: PartMaker<Read, Part>,
  isSame: (a: Read, b: Read) => boolean,
): PartMaker<Read, Part> {
  let last: { readonly bike: Bike; readonly setup: Read; readonly made: ReturnType<typeof make> } | null =
    null;
  return (bike, setup) => {
    if (last !== null && last.bike === bike && isSame(last.setup, setup)) return last.made;
    const made = make(bike, setup);
    last = { bike, setup, made };
    return made;
  };
}

const isPivotSame = (a: PivotMove, b: PivotMove): boolean =>
  a.pivotForward === b.pivotForward && a.pivotUp === b.pivotUp;

/** The parts of one search. */
export function keptParts(): MachineParts {
  return {
    fixed: kept(NEW_PARTS.fixed, () => true),
    front: kept(
      NEW_PARTS.front,
      (a, b) =>
        a.forkTubes === b.forkTubes &&
        a.forkExtenders === b.forkExtenders &&
        a.clampOffset === b.clampOffset &&
        a.headAngleCupsDeg === b.headAngleCupsDeg &&
        isPivotSame(a, b),
    ),
    rear: kept(
      NEW_PARTS.rear,
      (a, b) =>
        a.shockLength === b.shockLength &&
        a.shockMountShim === b.shockMountShim &&
        a.linkLength === b.linkLength &&
        a.axlePosition === b.axlePosition &&
        isPivotSame(a, b),
    ),
    onFrame: kept(
      NEW_PARTS.onFrame,
      (a, b) =>
        isPivotSame(a, b) &&
        a.riderForward === b.riderForward &&
        a.riderMass === b.riderMass &&
        a.riderHeight === b.riderHeight &&
        a.passengerMass === b.passengerMass &&
        a.passengerHeight === b.passengerHeight &&
        a.fuelMass === b.fuelMass &&
        a.loadMass === b.loadMass &&
        a.loadHeight === b.loadHeight,
    ),
    wheels: kept(NEW_PARTS.wheels, (a, b) => a.frontTyre === b.frontTyre && a.rearTyre === b.rearTyre),
    onSprockets: kept(
      NEW_PARTS.onSprockets,
      (a, b) =>
        a.rearTeeth === b.rearTeeth &&
        a.frontTeeth === b.frontTeeth &&
        a.chainSlack === b.chainSlack &&
        a.chainLinks === b.chainLinks,
    ),
    springs: kept(
      NEW_PARTS.springs,
      (a, b) =>
        a.forkPreload === b.forkPreload &&
        a.shockPreload === b.shockPreload &&
        a.forkSpringRate === b.forkSpringRate &&
        a.shockSpringRate === b.shockSpringRate &&
        a.forkAirGap === b.forkAirGap &&
        a.forkAirPressure === b.forkAirPressure &&
        a.shockAirGap === b.shockAirGap &&
        a.shockAirPressure === b.shockAirPressure,
    ),
  };
}

/** A function that gives back what it gave last while both of what it is given stay. */
function keptOf<A, B, Made>(make: (a: A, b: B) => Made): (a: A, b: B) => Made {
  let last: { readonly a: A; readonly b: B; readonly made: Made } | null = null;
  return (a, b) => {
    if (last === null || last.a !== a || last.b !== b) last = { a, b, made: make(a, b) };
    return last.made;
  };
}

/** The spring laws of one search: they stay while springs and rear suspension do. */
export function keptLaws(): SpringLaws {
  const { fork, shock, rearMost } = NEW_LAWS;
  return { fork: keptOf(fork), shock: keptOf(shock), rearMost: keptOf(rearMost) };
}
