/** Parts of a machine that are made anew only once an adjuster that they follow from has turned. */
import type { PivotMove } from '../chassis/pivot-move.ts';
import type { AdjusterKey, Setup } from '../adjusters/setup.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import type { Bike } from '../parts/bike.ts';
import { NEW_LAWS, type SpringLaws } from '../springs/sprung-machine.ts';
import { machine, type Machine, type NoMachine } from '../standing/machine.ts';
import { NEW_PARTS, type MachineParts, type PartMaker } from '../standing/machine-parts.ts';
import type { SpringSet, SpringSetup } from '../standing/spring-set.ts';
import type { stance, Stance, Travel } from '../standing/stance.ts';

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
    springs: kept(halvesKept(NEW_PARTS.springs), (a, b) => isForkSame(a, b) && isShockSame(a, b)),
  };
}

const isForkSame = (a: SpringSetup, b: SpringSetup): boolean =>
  a.forkPreload === b.forkPreload &&
  a.forkSpringRate === b.forkSpringRate &&
  a.forkAirGap === b.forkAirGap &&
  a.forkAirPressure === b.forkAirPressure;

const isShockSame = (a: SpringSetup, b: SpringSetup): boolean =>
  a.shockPreload === b.shockPreload &&
  a.shockSpringRate === b.shockSpringRate &&
  a.shockAirGap === b.shockAirGap &&
  a.shockAirPressure === b.shockAirPressure;

/** The same springs, of which the end that nothing was turned at stays the one that was made last, and its spring law with it. */
function halvesKept(make: MachineParts['springs']): MachineParts['springs'] {
  let last: { readonly bike: Bike; readonly setup: SpringSetup; readonly part: SpringSet } | null = null;
  return (bike, setup) => {
    const made = make(bike, setup);
    const before = last !== null && last.bike === bike ? last : null;
    const part: SpringSet = {
      fork: before !== null && isForkSame(before.setup, setup) ? before.part.fork : made.part.fork,
      shock: before !== null && isShockSame(before.setup, setup) ? before.part.shock : made.part.shock,
    };
    last = { bike, setup, part };
    return { ...made, part };
  };
}

/** Adjusters that change the springs and nothing else of a machine. */
export const SPRING_KEYS: readonly AdjusterKey[] = [
  'forkPreload',
  'shockPreload',
  'forkSpringRate',
  'shockSpringRate',
  'forkAirGap',
  'forkAirPressure',
  'shockAirGap',
  'shockAirPressure',
] satisfies readonly (keyof SpringSetup)[];

/** A machine with the springs to be put into it: its own may be those of another combination. */
export interface WithSprings {
  readonly ok: true;
  readonly machine: Machine;
  readonly springs: SpringSet;
}

/**
 * Makes the machines of one search, in which no adjuster but those of `turned` ever turns. While springs alone turn, the
 * machine stays the same one, and so do the stances that were made of it.
 */
export function keptMachine(
  bike: Bike,
  turned: readonly AdjusterKey[],
): (setup: Setup) => WithSprings | NoMachine {
  const parts = keptParts();
  const others = turned.filter((key) => !SPRING_KEYS.includes(key));
  let last: { readonly setup: Setup; readonly machine: Machine } | null = null;
  return (setup) => {
    const before = last;
    if (before !== null && others.every((key) => before.setup[key] === setup[key])) {
      const { part, wrong } = parts.springs(bike, setup);
      if (wrong === null) return { ok: true, machine: before.machine, springs: part };
    }
    const made = machine(bike, setup, parts);
    if (!made.ok) return made;
    last = { setup, machine: made };
    return { ok: true, machine: made, springs: made.springs };
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

/** The spring laws of one search: they stay while springs and rear suspension do, and its stances while the machine does. */
export function keptLaws(): SpringLaws {
  const { fork, shock, rearMost, toppedOut, standAt } = NEW_LAWS;
  const hung = keptOf((machine: Machine, _travel: null) => toppedOut(machine));
  return {
    fork: keptOf(fork),
    shock: keptOf(shock),
    rearMost: keptOf(rearMost),
    toppedOut: (machine) => hung(machine, null),
    standAt: keptStance(standAt),
  };
}

/** A stance as `make` makes it, the one made last where machine and travel stay. */
function keptStance(make: typeof stance): typeof stance {
  let last: { readonly machine: Machine; readonly travel: Travel; readonly made: Stance | NoLinkage } | null =
    null;
  return (machine, travel) => {
    if (
      last === null ||
      last.machine !== machine ||
      last.travel.front !== travel.front ||
      last.travel.rear !== travel.rear
    )
      last = { machine, travel, made: make(machine, travel) };
    return last.made;
  };
}
