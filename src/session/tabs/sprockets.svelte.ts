/** The choice of sprockets: the pairs to compute, filter, order and compare, and the fitting of one of them. */
import { filteredPairs, sortedPairs, type PairFilter, type PairKey } from '../../core/effects/pair-choice.ts';
import {
  pairAsItStands,
  sprocketPairs,
  type PairsAsked,
  type SprocketPair,
  type TeethRange,
} from '../../core/effects/sprocket-pairs.ts';
import { hasRuns, type DriveKind } from '../../core/parts/drive-kind.ts';
import { LEAST_TEETH, MOST_TEETH } from '../../core/drive/sprocket.ts';
import { linkRuleOf, stretchOf } from '../../core/standing/chain-of.ts';
import type { NoStand } from '../../core/riding/no-stand.ts';
import type { BikeWithSetup } from '../../document/document.ts';
import { fitSprockets } from '../../document/edits.ts';
import { QUANTITIES } from '../../core/units/all-quantities.ts';
import type { BikeSession } from '../bike-session.svelte.ts';
import type { Standing } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** Pairs solved at most, so that an answer stays immediate. */
const MOST_PAIRS = 1000;
/** Rows put on the page at first, and more at a time. */
const ROWS_AT_ONCE = 60;

const ABOUT_FRONT = 2;
const ABOUT_REAR = 4;

/** What every pair is compared with. */
export type Against = 'baseline' | 'present';

export interface SprocketFilters {
  /** Same ratio as the pair compared with, within so many per cent; null takes any. */
  readonly sameRatio: number | null;
  /** Only pairs whose axle is in its slot, with nothing in the way. */
  readonly fits: boolean;
  /** Least gap of the chain to the pivot, mm. */
  readonly leastGap: number | null;
  /** Chains in stock, links. */
  readonly chains: readonly number[] | null;
}

export type FilterKey = keyof SprocketFilters;

const NO_FILTERS: SprocketFilters = { sameRatio: null, fits: false, leastGap: null, chains: null };

/** The filters that can be lifted when no pair passes, and how many pairs would pass then. */
export interface Lift {
  readonly lifted: readonly FilterKey[];
  readonly passing: number;
}

export interface SprocketRow {
  readonly pair: SprocketPair;
  readonly isPresent: boolean;
  readonly isBaseline: boolean;
  /** Fitting it would change teeth, chain or axle. */
  readonly changes: boolean;
}

/** An axle less far than this from where a chain puts it stands there: nobody notices it, mm. */
const SAME_PLACE = QUANTITIES.length.leastTold;

export class Sprockets {
  readonly #session: BikeSession;
  readonly #standing: Standing;

  /** Null follows the pairs of bike and baseline. */
  frontAsked = $state.raw<TeethRange | null>(null);
  rearAsked = $state.raw<TeethRange | null>(null);
  filters = $state.raw<SprocketFilters>({ ...NO_FILTERS, fits: true });
  /** Null: as the bike has it. */
  halfLinkAsked = $state<boolean | null>(null);
  sortKey = $state<PairKey>('frontTeeth');
  falling = $state(false);
  against = $state<Against>('baseline');
  /** The row that is open, as "14/42". */
  selected = $state<string | null>(null);
  #rowsAsked = $state(ROWS_AT_ONCE);
  /** The ranges that a pair was fitted from: they stay while that pair is tried, so that no other pairs come and go. */
  #tried = $state.raw<{ readonly frontTeeth: TeethRange; readonly rearTeeth: TeethRange } | null>(null);

  /** As committed: a thousand pairs worked out at every step of a drag would make the drag stutter. */
  readonly #document = $derived.by(() => this.#session.history.present);
  /** Whether a hand holds something: the table then still shows the bike before. */
  readonly waits: boolean = $derived.by(() => this.#session.draft !== null);
  readonly kind: DriveKind = $derived.by(() => this.#document.bike.drive.kind);
  readonly hasSprockets: boolean = $derived(hasRuns(this.kind));
  readonly front: TeethRange = $derived.by(() => this.frontAsked ?? this.#about('frontTeeth', ABOUT_FRONT));
  readonly rear: TeethRange = $derived.by(() => this.rearAsked ?? this.#about('rearTeeth', ABOUT_REAR));
  readonly halfLink: boolean = $derived.by(() => this.halfLinkAsked ?? this.#document.bike.drive.halfLink);
  /** The chain longer than new by wear, per cent: the pairs' axle places go by it, as the bike's own does. */
  readonly stretchPercent: number = $derived.by(() => stretchOf(this.#document.bike.drive));
  readonly #asked: PairsAsked = $derived.by(() => ({
    bike: this.#document.bike,
    setup: this.#document.setup,
    near: this.#document.baseline.setup,
    ride: this.#standing.state,
    front: this.front,
    rear: this.rear,
    leastFront: this.#document.bike.drive.leastFrontTeeth,
    linksInHand: this.filters.chains,
    rule: linkRuleOf({ kind: this.kind, halfLink: this.halfLink }),
    slack: this.#document.setup.chainSlack,
    setAt: 0,
    stretchPercent: this.stretchPercent,
  }));
  readonly #solved: readonly SprocketPair[] | NoStand = $derived.by(() => sprocketPairs(this.#asked));
  /** Why there is no pair to show; null when all is well. */
  readonly problem: NoStand | null = $derived.by(() => ('ok' in this.#solved ? this.#solved : null));
  readonly all: readonly SprocketPair[] = $derived.by(() => ('ok' in this.#solved ? [] : this.#solved));

  readonly #presentPair: SprocketPair | NoStand = $derived.by(() => this.#asItStands(this.#document));
  readonly #baselinePair: SprocketPair | NoStand = $derived.by(() =>
    this.#asItStands(this.#document.baseline),
  );
  /** The pair compared with, as it stands on the present bike; null where it cannot stand. */
  readonly reference: SprocketPair | null = $derived.by(() => {
    const pair = this.against === 'baseline' ? this.#baselinePair : this.#presentPair;
    return 'frontTeeth' in pair ? pair : null;
  });
  readonly present: SprocketPair | null = $derived.by(() =>
    'frontTeeth' in this.#presentPair ? this.#presentPair : null,
  );

  /** The pairs that meet the filters. */
  readonly passed: readonly SprocketPair[] = $derived.by(() =>
    filteredPairs(this.all, this.#pairFilter(this.filters)),
  );
  readonly passing: number = $derived.by(() => this.passed.length);
  readonly rows: readonly SprocketRow[] = $derived.by(() =>
    sortedPairs(this.passed, this.sortKey, this.falling ? 'falling' : 'rising')
      .slice(0, this.#rowsAsked)
      .map((pair) => this.#row(pair)),
  );
  /** Pairs that pass but are not among the rows yet. */
  readonly hidden: number = $derived.by(() => this.passing - this.rows.length);
  /** Which filter to lift when none passes; null when some pass or there is nothing to lift. */
  readonly lift: Lift | null = $derived.by(() =>
    this.passing > 0 || this.all.length === 0 ? null : this.#bestLift(),
  );

  constructor({ session, standing }: Pick<Workbench, 'session' | 'standing'>) {
    this.#session = session;
    this.#standing = standing;
  }

  #about(key: 'frontTeeth' | 'rearTeeth', reach: number): TeethRange {
    const teeth = [this.#document.setup[key], this.#document.baseline.setup[key]];
    const tried = this.#tried?.[key];
    if (tried !== undefined && teeth.every((each) => each >= tried.least && each <= tried.most)) return tried;
    return {
      least: Math.max(LEAST_TEETH, Math.min(...teeth) - reach),
      most: Math.min(MOST_TEETH, Math.max(...teeth) + reach),
    };
  }

  /** The sprockets, chain and axle place of some adjusters, on the present bike. */
  #asItStands({ setup }: BikeWithSetup): SprocketPair | NoStand {
    const { axlePosition, chainLinks, chainSlack, frontTeeth, rearTeeth } = setup;
    const own = { axlePosition, chainLinks, chainSlack, frontTeeth, rearTeeth };
    const present = { ...this.#asked.setup, ...own };
    return pairAsItStands({
      ...this.#asked,
      setup: present,
      near: present,
      slack: chainSlack,
      rule: linkRuleOf(this.#document.bike.drive),
    });
  }

  #pairFilter({ sameRatio, fits, leastGap }: SprocketFilters): PairFilter {
    const wanted = this.reference?.ratio ?? null;
    const ratio = sameRatio === null || wanted === null ? null : { wanted, tolerancePercent: sameRatio };
    // The chains in stock are those that the pairs were solved with.
    return { ratio, links: null, fits, leastGap };
  }

  #passingWith(filters: SprocketFilters): number {
    const same = filters.chains === this.filters.chains;
    const all = same ? this.all : sprocketPairs({ ...this.#asked, linksInHand: filters.chains });
    return 'ok' in all ? 0 : filteredPairs(all, this.#pairFilter(filters)).length;
  }

  #bestLift(): Lift | null {
    const active = (Object.keys(NO_FILTERS) as FilterKey[]).filter(
      (key) => this.filters[key] !== NO_FILTERS[key],
    );
    if (active.length === 0) return null;
    const alone = active.map((key) => ({
      lifted: [key],
      passing: this.#passingWith({ ...this.filters, [key]: NO_FILTERS[key] }),
    }));
    const best = alone.reduce((a, b) => (b.passing > a.passing ? b : a));
    return best.passing > 0 ? best : { lifted: active, passing: this.#passingWith(NO_FILTERS) };
  }

  #row(pair: SprocketPair): SprocketRow {
    const { setup, baseline } = this.#document;
    const has = (teeth: { readonly frontTeeth: number; readonly rearTeeth: number }): boolean =>
      teeth.frontTeeth === pair.frontTeeth && teeth.rearTeeth === pair.rearTeeth;
    const isPresent = has(setup);
    const inPlace =
      setup.chainLinks === null
        ? Math.abs((pair.axlePosition ?? NaN) - setup.axlePosition) < SAME_PLACE
        : setup.chainLinks === pair.links;
    return {
      pair: this.#asCompared(pair),
      isPresent,
      isBaseline: has(baseline.setup),
      changes: !(isPresent && inPlace),
    };
  }

  /** The pair that all are compared with as it stands, where its chain puts the axle to that place: no row differs from itself. */
  #asCompared(pair: SprocketPair): SprocketPair {
    const { reference } = this;
    const isReference =
      reference !== null &&
      reference.frontTeeth === pair.frontTeeth &&
      reference.rearTeeth === pair.rearTeeth &&
      Math.abs((reference.axlePosition ?? NaN) - (pair.axlePosition ?? NaN)) < SAME_PLACE;
    return isReference ? reference : pair;
  }

  /** One end of a range; the other gives way when it would be passed, and the count of pairs stays within its limit. */
  setRange(which: 'front' | 'rear', range: TeethRange): void {
    if (which === 'front') this.frontAsked = range;
    else this.rearAsked = range;
    this.#rowsAsked = ROWS_AT_ONCE;
  }

  /** Why a range is not taken, in words; null when it is. */
  rangeRefusal(which: 'front' | 'rear', { least, most }: TeethRange): string | null {
    if (least > most) return `This range would run from ${least} down to ${most}.`;
    const other = which === 'front' ? this.rear : this.front;
    const pairs = (most - least + 1) * (other.most - other.least + 1);
    return pairs > MOST_PAIRS ? `That would be ${pairs} pairs; ${MOST_PAIRS} at once are the most.` : null;
  }

  /** Ranges about the pairs of bike and baseline again. */
  rangesAbout(): void {
    this.frontAsked = null;
    this.rearAsked = null;
    this.#tried = null;
    this.#rowsAsked = ROWS_AT_ONCE;
  }

  setFilters(change: Partial<SprocketFilters>): void {
    this.filters = { ...this.filters, ...change };
    this.#rowsAsked = ROWS_AT_ONCE;
  }

  liftFilters({ lifted }: Lift): void {
    this.setFilters(Object.fromEntries(lifted.map((key) => [key, NO_FILTERS[key]])));
  }

  /** Orders by a column; by the same column again, the other way round. */
  sortBy(key: PairKey): void {
    this.falling = this.sortKey === key ? !this.falling : false;
    this.sortKey = key;
  }

  showMore(): void {
    this.#rowsAsked += ROWS_AT_ONCE;
  }

  select(key: string): void {
    this.selected = this.selected === key ? null : key;
  }

  /** Fits a pair with its chain and axle place, as one entry of the history. */
  fitPair({ frontTeeth, rearTeeth, links, axlePosition }: SprocketPair): void {
    if (links === null || axlePosition === null) return;
    const fitted = { frontTeeth, rearTeeth, links, axlePosition };
    this.#tried = { frontTeeth: this.front, rearTeeth: this.rear };
    this.#session.commit((from) => fitSprockets(from, fitted), `Sprockets ${frontTeeth}/${rearTeeth}`);
    // Words that were opened follow the pair; unasked, they would push the pairs to try next out of sight.
    if (this.selected !== null) this.selected = pairKey({ frontTeeth, rearTeeth });
  }
}

/** A pair's name, as "14/42". */
export function pairKey(pair: { readonly frontTeeth: number; readonly rearTeeth: number }): string {
  return `${pair.frontTeeth}/${pair.rearTeeth}`;
}
