/** What the projector shows: the bike on its way from the baseline to how it stands now, with the readings chosen. */
import { driveNoun } from '../../core/parts/drive-noun.ts';
import { metricReading } from '../../core/readings/metric-reading.ts';
import { shownDifference } from '../../core/units/number-style.ts';
import { bikeExtent } from '../../scene/extent.ts';
import { headlineOnWay } from '../../words/why/way-words.ts';
import { whyStory } from '../../words/why/why-words.ts';
import { CloseUps } from '../close-ups.svelte.ts';
import { Drawing } from '../drawing.svelte.ts';
import { mixPlain } from './mix-plain.ts';
import { Reasons } from './reasons.svelte.ts';
import { setupBetween } from './setup-between.ts';
import { SideView } from '../side-view.svelte.ts';
import type { PreferenceData } from '../preferences.svelte.ts';
import type { ReadingRow, Stood } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';

/** Size of words on the drawing, as a part of its width: 24 px and more on a screen of 1920; never below the least, px. */
const TEXT_PART = 0.0192;
const LEAST_TEXT_PX = 13;
/** How long the way from before to now takes, and how long the picture rests at either end, ms. */
const WAY_MS = 5000;
const REST_MS = 1500;

export class Projector {
  readonly #bench: Workbench;
  readonly #reasons: Reasons;
  /** How far the bike has come from the baseline to how it stands now, 0 to 1. */
  part = $state(1);
  /** Whether figures are shown, in words and on the drawing; a room may be asked first. */
  figures = $state(true);
  readonly sideView = new SideView();
  readonly drawing: Drawing;

  /** The bike as it is shown; where what lies between cannot stand, the nearer end. */
  readonly live: Stood | null = $derived.by(() => {
    const { live, baseline } = this.#bench.standing;
    if (live === null || baseline === null || this.part >= 1) return live;
    if (this.part <= 0) return baseline;
    const found = this.#bench.standing.stand({
      bike: mixPlain(baseline.bike, live.bike, this.part),
      setup: setupBetween(baseline.setup, live.setup, this.part),
    });
    if ('stance' in found) return found;
    return this.part < 0.5 ? baseline : live;
  });

  /** Whether there is a way from before to now to show. */
  readonly hasWay: boolean = $derived.by(
    () =>
      this.drawing.differs && this.#bench.standing.baseline !== null && this.#bench.standing.problem === null,
  );

  /** The readings chosen on the page, of the bike as it is shown. */
  readonly rows: readonly ReadingRow[] = $derived.by(() => {
    const { live } = this;
    if (live === null) return [];
    const { shown } = this.#bench.preferences.data;
    return (
      [...this.#bench.standing.rows]
        .filter(({ reading }) => shown.includes(reading.key))
        // Those that changed first, since a room has room for few; by the bike of now, so that none moves on the way.
        .sort((a, b) => this.#changed(b) - this.#changed(a))
        .map((row) => ({ ...row, value: metricReading(row.reading, live.stance) }))
    );
  });

  /** What changed since the baseline, in lay words; null where nothing did. */
  readonly #told: string | null = $derived.by(() => {
    const { found } = this.#reasons;
    const { bike } = this.#bench.session.document;
    if (found === null) return null;
    const { splits, mechanism } = found;
    const drive = driveNoun(bike.drive.kind);
    return whyStory(splits, mechanism, drive, this.#bench.preferences.style).headline;
  });

  /** What changed, and whether the picture is there yet; the bike's name where nothing did. */
  readonly headline: string = $derived.by(() => this.#headlineAt(this.part));

  /** Every headline between before and now. */
  readonly headlines: readonly string[] = $derived.by(() =>
    [0, 0.5, 1].map((part) => this.#headlineAt(part)),
  );

  constructor(bench: Workbench) {
    this.#bench = bench;
    this.#reasons = new Reasons(bench);
    const { session, standing } = bench;
    const shownData = (): PreferenceData => {
      const { data } = bench.preferences;
      return this.figures ? data : { ...data, labels: false };
    };
    const preferences = {
      get data() {
        return shownData();
      },
      get style() {
        return bench.preferences.style;
      },
    };
    const show = (): Stood | null => this.live;
    const shown = {
      get live() {
        return show();
      },
      get baseline() {
        return standing.baseline;
      },
      get problem() {
        return standing.problem;
      },
    };
    const textPx = (): number => Math.max(LEAST_TEXT_PX, TEXT_PART * this.sideView.widthPx);
    this.drawing = new Drawing(session, shown, preferences, this.sideView, textPx);
    new CloseUps({
      preferences,
      drawing: this.drawing,
      sideView: this.sideView,
      handles: { boxes: [] },
      get closeUpPx() {
        return textPx();
      },
    });
  }

  #headlineAt(part: number): string {
    const told = this.#told;
    if (told === null) return this.#bench.session.document.bike.name;
    return this.hasWay ? headlineOnWay(told, part) : told;
  }

  /** 1 for a reading that is written otherwise than the baseline's, else 0. */
  #changed({ reading: { quantity }, value, baseline }: ReadingRow): 0 | 1 {
    if (typeof value !== 'number' || typeof baseline !== 'number') return 0;
    return shownDifference(baseline, value, quantity, this.#bench.preferences.style) === 0 ? 0 : 1;
  }

  resize(widthPx: number, heightPx: number): void {
    const { live } = this.#bench.standing;
    this.sideView.resize(widthPx, heightPx, live === null ? null : bikeExtent(live.stance));
  }

  /** Where the looped way from before to now has come to after so long, ms: it rests at either end. */
  go(passedMs: number): void {
    const round = passedMs % (2 * REST_MS + WAY_MS);
    this.part = Math.min(1, Math.max(0, (round - REST_MS) / WAY_MS));
  }
}
