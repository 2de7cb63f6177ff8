/** What is tried one by one: steps for what the rider says, ways to lower the seat, one step of every adjuster. */
import type { Setup } from '../../core/adjusters/setup.ts';
import { COMPLAINTS } from '../../core/plan/all-complaints.ts';
import type { Complaint } from '../../core/plan/complaint.ts';
import type { Why } from '../../core/effects/why.ts';
import { firstSteps, type FirstStep } from '../../core/plan/first-steps.ts';
import { turnedTo, waysToLower, type Lowering } from '../../core/plan/lowering.ts';
import { raiseEnds, type EndsRaised } from '../../core/plan/two-ends.ts';
import { sortedByAim, whatMovesWhat, whyStep, type StepTried } from '../../core/plan/what-moves-what.ts';
import type { RideStateKey } from '../../core/riding/states/all-ride-states.ts';
import type { BikeDocument } from '../../document/document.ts';
import { setAdjusters } from '../../document/edits.ts';
import type { BikeSession } from '../bike-session.svelte.ts';
import type { Standing } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** How far the ends are raised side by side, mm. */
export const ENDS_RISE = 5;

/** How far the seat comes down at first, mm. */
const FIRST_SEAT_DOWN = 20;

export class Remedies {
  readonly #session: BikeSession;
  readonly #standing: Standing;

  /** The reading that the table of steps is about. */
  wished = $state('trail');
  /** The complaint by its key. */
  said = $state(COMPLAINTS[0].key);

  /** As committed: a drag counts once it is let go. */
  readonly document: BikeDocument = $derived.by(() => this.#session.history.present);

  readonly state: RideStateKey = $derived.by(() => this.#standing.state);

  /** One step of every adjuster in the ride state shown, sorted by what moves the wished reading and leaves the rest. */
  readonly steps: readonly StepTried[] = $derived.by(() => {
    const { bike, setup } = this.document;
    return sortedByAim(whatMovesWhat(bike, setup, this.state), this.wished);
  });

  /** What a step does in the ride state shown, cause by cause. */
  whyOf(step: StepTried): Why | null {
    const { bike, setup } = this.document;
    return whyStep(bike, setup, this.state, step);
  }

  /** Either end raised, and both, in the ride state shown. */
  readonly ends: readonly EndsRaised[] = $derived.by(() => {
    const { bike, setup } = this.document;
    return raiseEnds(bike, setup, this.state, ENDS_RISE);
  });

  /** What the rider says, and what a mechanic tries first for it on this bike. */
  readonly complaint: Complaint = $derived.by(
    () => COMPLAINTS.find(({ key }) => key === this.said) ?? COMPLAINTS[0],
  );
  readonly firstSteps: readonly FirstStep[] = $derived.by(() =>
    firstSteps(this.document.bike, this.document.setup, this.complaint),
  );

  /** How far the seat is to come down, mm, and the ways to it. */
  seatDown = $state(FIRST_SEAT_DOWN);
  readonly waysToLower: readonly Lowering[] = $derived.by(() =>
    waysToLower(this.document.bike, this.document.setup, this.seatDown),
  );

  constructor({ session, standing }: Pick<Workbench, 'session' | 'standing'>) {
    this.#session = session;
    this.#standing = standing;
  }

  /** Turns one adjuster by its step. */
  tryStep({ adjuster, to }: Pick<StepTried, 'adjuster' | 'to'>, name: string): void {
    this.#turn({ [adjuster]: to }, name);
  }

  /** Turns what a way to lower the seat turns, as one undo. */
  tryLowering(way: Lowering, name: string): void {
    this.#turn(turnedTo(way), name);
  }

  #turn(turned: Partial<Setup>, name: string): void {
    this.#session.commit((from) => setAdjusters(from, turned), name);
  }
}
