/** How this person likes to see things; kept apart from the bike and never part of its file. */
import type { PinnedText, SheetDraft } from '../document/sheet.ts';
import type { ThemeName } from '../scene/shapes/theme.ts';
import type { ShadowAlign } from '../scene/shadow-drawing.ts';
import type { AdjusterGroup } from '../core/adjusters/definition/adjuster-groups.ts';
import type { SagUse } from '../core/riding/sag-ranges.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import type { UnitSystem } from '../core/units/quantity.ts';

/** Readings shown until the user chooses others: what a shop owner explains with. */
export const FIRST_READINGS: readonly string[] = [
  'rake',
  'trail',
  'wheelbase',
  'swingarmAngle',
  'pivotHeight',
  'frontTravel',
  'rearTravel',
  'antiSquat',
  'antiSquatSwingarm',
  'antiSquatChain',
  'chainSliderClearance',
  'finalDriveRatio',
  'frontWeightShare',
  'centreHeight',
  'wheelieLimit',
  'rearLiftLimit',
];

/** The half-width of the neutral zone offered, in per cent of anti-squat. */
export const NEUTRAL_BANDS: readonly number[] = [2, 5, 10];

/** Groups of adjusters open until the user opens others: what is turned first, so that all names are in sight. */
export const FIRST_OPEN_ADJUSTERS: readonly string[] = ['rideHeight' satisfies AdjusterGroup];

/** How the page is laid out: the panels on both sides of the drawing and below it, all on one side, or below one another. */
export type PageLayout = 'wide' | 'beside' | 'narrow';

/** What is kept, as plain data. */
export interface PreferenceData {
  readonly theme: ThemeName;
  /** Whether a person has chosen the theme; until then it follows what the system prefers. */
  readonly themeChosen: boolean;
  readonly system: UnitSystem;
  readonly decimal: '.' | ',';
  readonly shown: readonly string[];
  readonly align: ShadowAlign;
  readonly band: number;
  readonly zones: boolean;
  readonly lines: boolean;
  readonly labels: boolean;
  readonly shadow: boolean;
  /** Whether readings of a measured bike show their ±. */
  readonly plusMinus: boolean;
  /** Spring rates at hand, N/mm: of one fork spring and of one shock's. */
  readonly ratesFront: readonly number[];
  readonly ratesRear: readonly number[];
  readonly snapping: boolean;
  /** What the bike is used for, by which its sag is judged. */
  readonly sagUse: SagUse;
  /** The groups of adjusters that are open, by their keys; the others are folded. */
  readonly openAdjusters: readonly string[];
  /** The drawing's part of the page, from 0 to 1, in each layout in which it was chosen. */
  readonly drawingParts: Readonly<Partial<Record<PageLayout, number>>>;
  /** The columns beside the drawing that are folded. */
  readonly folded: readonly string[];
  /** The ride state chosen last, by its key; empty until one is. */
  readonly rideState: string;
  /** The setup sheets that are being filled in and are not kept yet, one a bike at most; the one touched last comes last. */
  readonly sheetDrafts: readonly SheetDraft[];
  /** Pinned states of bikes, each as its text in a file. */
  readonly variants: readonly PinnedText[];
  /** Sheets kept since all bikes were last saved to a file. */
  readonly sheetsSinceCopy: number;
  /** Where others reach this page, for links to a bike; empty for the address that it has here. */
  readonly publicAddress: string;
}

export const FIRST_PREFERENCES: PreferenceData = {
  theme: 'paper',
  themeChosen: false,
  system: 'metric',
  decimal: '.',
  shown: FIRST_READINGS,
  align: 'rearPatch',
  band: 5,
  zones: true,
  lines: true,
  labels: true,
  shadow: true,
  ratesFront: [],
  ratesRear: [],
  plusMinus: true,
  snapping: true,
  sagUse: 'road',
  openAdjusters: FIRST_OPEN_ADJUSTERS,
  drawingParts: {},
  folded: [],
  rideState: '',
  sheetDrafts: [],
  variants: [],
  sheetsSinceCopy: 0,
  publicAddress: '',
};

export class Preferences {
  data = $state.raw<PreferenceData>(FIRST_PREFERENCES);
  /** The theme that suits what the system prefers. */
  suited = $state<ThemeName>('paper');
  readonly theme: ThemeName = $derived(this.data.themeChosen ? this.data.theme : this.suited);
  readonly style: NumberStyle = $derived({ system: this.data.system, decimal: this.data.decimal });

  change(changes: Partial<PreferenceData>): void {
    this.data = { ...this.data, ...changes };
  }

  /** Whether a group of adjusters is open. */
  adjustersOpen(group: AdjusterGroup): boolean {
    return this.data.openAdjusters.includes(group);
  }

  /** Folds a column beside the drawing, or opens it. */
  fold(column: string, folded: boolean): void {
    const others = this.data.folded.filter((each) => each !== column);
    if (folded || others.length < this.data.folded.length)
      this.change({ folded: folded ? [...others, column] : others });
  }

  /** Opens groups of adjusters, or folds them; the others stay as they are. */
  openAdjusters(groups: readonly AdjusterGroup[], open: boolean): void {
    const others = this.data.openAdjusters.filter((key) => !groups.some((group) => group === key));
    this.change({ openAdjusters: open ? [...others, ...groups] : others });
  }
}
