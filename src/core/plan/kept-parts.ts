/** Parts of a machine that are made anew only once an adjuster that they follow from has turned. */
import {
  MACHINE_PART_ADJUSTERS,
  SPRING_ADJUSTERS,
  type PartSetup,
} from '../adjusters/machine-part-adjusters.ts';
import type { AdjusterKey, Setup } from '../adjusters/setup.ts';
import type { NoLinkage } from '../linkage/no-linkage.ts';
import type { Bike } from '../parts/bike.ts';
import { NEW_LAWS, type SpringLaws } from '../springs/sprung-machine.ts';
import { machine, type Machine, type NoMachine } from '../standing/machine.ts';
import { NEW_PARTS, type MachineParts, type PartMaker } from '../standing/machine-parts.ts';
import type { SpringSet } from '../standing/spring-set.ts';
import type { stance, Stance, Travel } from '../standing/stance.ts';

/** Whether these adjusters stand alike in both setups. */
function areSame<Key extends AdjusterKey>(
  keys: readonly Key[],
  a: Pick<Setup, Key>,
  b: Pick<Setup, Key>,
): boolean {
  for (const key of keys) if (a[key] !== b[key]) return false;
  return true;
}

/** A maker that gives back the part it made last while the bike and these adjusters stay. */
function kept<Key extends AdjusterKey, Part>(
  make: PartMaker<Pick<Setup, Key>, Part>,
  keys: readonly Key[],
): PartMaker<Pick<Setup, Key>, Part> {
  let last: {
    readonly bike: Bike;
    readonly setup: Pick<Setup, Key>;
    readonly made: ReturnType<typeof make>;
  } | null = null;
  return (bike, setup) => {
    if (last !== null && last.bike === bike && areSame(keys, last.setup, setup)) return last.made;
    const made = make(bike, setup);
    last = { bike, setup, made };
    return made;
  };
}

/**
 * The parts of one search, in which no adjuster but those of `turned` ever turns: only these are compared, because a search
 * turns a few and compares a million times.
 */
export function keptParts(turned: readonly AdjusterKey[]): MachineParts {
  const keep = <Key extends AdjusterKey, Part>(
    make: PartMaker<Pick<Setup, Key>, Part>,
    keys: readonly Key[],
  ): PartMaker<Pick<Setup, Key>, Part> =>
    kept(
      make,
      keys.filter((key) => turned.includes(key)),
    );
  const { fixed, front, rear, onFrame, wheels, onSprockets, springs } = NEW_PARTS;
  return {
    fixed: keep(fixed, MACHINE_PART_ADJUSTERS.fixed),
    front: keep(front, MACHINE_PART_ADJUSTERS.front),
    rear: keep(rear, MACHINE_PART_ADJUSTERS.rear),
    onFrame: keep(onFrame, MACHINE_PART_ADJUSTERS.onFrame),
    wheels: keep(wheels, MACHINE_PART_ADJUSTERS.wheels),
    onSprockets: keep(onSprockets, MACHINE_PART_ADJUSTERS.onSprockets),
    springs: keep(halvesKept(springs), MACHINE_PART_ADJUSTERS.springs),
  };
}

/** The same springs. An end at which nothing was turned stays the object made last, so that its spring law is kept too. */
function halvesKept(make: MachineParts['springs']): MachineParts['springs'] {
  let last: { readonly bike: Bike; readonly setup: PartSetup<'springs'>; readonly part: SpringSet } | null =
    null;
  return (bike, setup) => {
    const made = make(bike, setup);
    const before = last !== null && last.bike === bike ? last : null;
    const half = <End extends keyof SpringSet>(end: End): SpringSet[End] =>
      before !== null && areSame<keyof PartSetup<'springs'>>(SPRING_ADJUSTERS[end], before.setup, setup)
        ? before.part[end]
        : made.part[end];
    const part: SpringSet = { fork: half('fork'), shock: half('shock') };
    last = { bike, setup, part };
    return { ...made, part };
  };
}

const { springs: ofSprings, ...ofOtherParts } = MACHINE_PART_ADJUSTERS;
const ELSEWHERE: readonly AdjusterKey[] = Object.values(ofOtherParts).flat();

/** Adjusters that change the springs and nothing else of a machine. */
export const SPRING_KEYS: readonly AdjusterKey[] = ofSprings.filter((key) => !ELSEWHERE.includes(key));

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
  const parts = keptParts(turned);
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
