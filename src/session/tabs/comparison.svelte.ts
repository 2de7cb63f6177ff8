/** Up to four setups laid side by side: which were chosen, how each stands, and one adjuster taken over from one of them. */
import type { AdjusterKey } from '../../core/adjusters/setup.ts';
import {
  adjustersBetween,
  compareSetups,
  partsApart,
  takeAdjuster,
  type MeasuredPart,
  type SetupsCompared,
} from '../../core/effects/compare-setups.ts';
import type { NoStand } from '../../core/riding/no-stand.ts';
import { lookOf } from '../../curves/line-look.ts';
import type { BikeWithSetup } from '../../document/document.ts';
import { replaceSketched, setAdjusters, type EditReason } from '../../document/edits.ts';
import { openDocument } from '../../document/open-document.ts';
import { openSheet } from '../../document/open-sheet.ts';
import type { Ghost } from '../../scene/ghost-drawing.ts';
import * as ghostDrawing from '../../scene/ghost-drawing.ts';
import type { BikeStore } from '../../storage/bike-store.ts';
import { leftOutWords } from '../../words/kept/compare-words.ts';
import { sheetName } from '../../words/kept/sheet-words.ts';
import { Sheets } from '../keeping/sheets.svelte.ts';
import type { Stood } from '../standing.svelte.ts';
import type { Workbench } from '../workbench.svelte.ts';
import { Variants } from './variants.svelte.ts';

/** As many as a reader can tell apart on the drawing. */
const MOST_COMPARED = 4;
/** For setups that are no variant, which has its letter already. */
const LETTERS = 'ABCDEFGH';

/** A setup that can be laid beside others. */
export interface Comparable extends BikeWithSetup {
  readonly key: string;
  readonly name: string;
  /** Of the bike on the page, one of its sheets, or of another bike. */
  readonly of: 'page' | 'sheet' | 'other';
  /** The letter of a pinned variant; null for all others. */
  readonly pinned: string | null;
}

/** A setup that was chosen, as it stands in the ride state of the page. */
export interface Compared extends Comparable {
  readonly letter: string;
  /** Which of the ways to draw a line it has, from 0. */
  readonly slot: number;
  readonly stood: Stood | NoStand;
  /** The measured parts that differ from those of the first; its adjusters are compared where there are none. */
  readonly apart: readonly MeasuredPart[];
  /** The adjusters that can be taken over into the bike on the page. */
  readonly offered: readonly AdjusterKey[];
}

/** What was not taken over, from which setup, and why. */
export interface NotTaken {
  readonly adjuster: AdjusterKey;
  readonly letter: string;
  readonly reason: NoStand | EditReason;
}

interface Choice {
  readonly key: string;
  readonly slot: number;
}

const FIRST_CHOICE: readonly Choice[] = [
  { key: 'baseline', slot: 0 },
  { key: 'now', slot: 1 },
];

export class Comparison {
  readonly #bench: Workbench;
  readonly #sheets: Sheets;
  readonly #variants: Variants;
  #chosen = $state.raw<readonly Choice[]>(FIRST_CHOICE);
  /** Other bikes and their sheets, as far as they were asked for. */
  #others = $state.raw<readonly Comparable[]>([]);
  notTaken = $state.raw<NotTaken | null>(null);
  /** Why another bike or some of its sheets could not be read; null once all could. */
  unread = $state.raw<string | null>(null);

  /** All that can be compared, the latest sheet first. What a hand tries out does not count yet. */
  readonly comparables: readonly Comparable[] = $derived.by(() => {
    const { bike, setup, baseline } = this.#bench.session.history.present;
    const page = { of: 'page', pinned: null } as const;
    return [
      { ...page, key: 'now', name: 'Now', bike, setup },
      { ...page, ...baseline, key: 'baseline', name: baseline.name ?? 'Baseline' },
      ...this.#variants.pinned.map(({ letter, ...asSet }) => ({
        ...asSet,
        key: `variant ${letter}`,
        name: `Variant ${letter}`,
        of: 'page' as const,
        pinned: letter,
      })),
      ...[...this.#sheets.kept].reverse().map(({ id, sheet }) => ({
        key: id,
        name: sheetName(sheet),
        of: 'sheet' as const,
        pinned: null,
        bike: sheet.bike,
        setup: sheet.setup,
      })),
      ...this.#others,
    ];
  });

  /** Those that were chosen, the one that the others are held against first. */
  readonly compared: readonly Compared[] = $derived.by(() => {
    const { session, standing } = this.#bench;
    const { bike, setup } = session.history.present;
    const free = [...LETTERS].filter((each) => !this.#variants.pinned.some(({ letter }) => letter === each));
    const chosen = this.#chosen.flatMap(({ key, slot }) => {
      const found = this.comparables.find((each) => each.key === key);
      return found === undefined ? [] : [{ ...found, slot, letter: found.pinned ?? free[slot] }];
    });
    return chosen.map((each) => ({
      ...each,
      stood: standing.stand(each),
      apart: partsApart(chosen[0].bike, each.bike),
      offered: partsApart(bike, each.bike).length === 0 ? adjustersBetween(setup, each.setup) : [],
    }));
  });

  /** The adjusters of all that have the same measured parts as the first; null where nothing is chosen. */
  readonly adjusters: SetupsCompared | null = $derived.by(() => {
    const [first, ...others] = this.compared.filter(({ apart }) => apart.length === 0);
    return first === undefined ? null : compareSetups(first, others);
  });

  /** The first that stands: readings are held against its own; 0 where none does. */
  readonly from: number = $derived.by(() =>
    Math.max(
      0,
      this.compared.findIndex(({ stood }) => 'stance' in stood),
    ),
  );

  readonly #outlines: readonly Ghost[] = $derived.by(() =>
    this.compared.flatMap(({ letter, slot, stood }) =>
      'stance' in stood
        ? [
            {
              name: letter,
              bike: stood.bike,
              stance: stood.stance,
              role: lookOf({ of: 'compared', slot }).role,
            },
          ]
        : [],
    ),
  );

  constructor(bench: Workbench) {
    this.#bench = bench;
    this.#sheets = bench.stateOf(Sheets);
    this.#variants = bench.stateOf(Variants);
    bench.session.listen({ opened: () => this.#begin() });
  }

  /** What was compared of one bike says nothing of another. */
  #begin(): void {
    this.#chosen = FIRST_CHOICE;
    this.#others = [];
    this.notTaken = null;
    this.unread = null;
  }

  get hasRoom(): boolean {
    return this.compared.length < MOST_COMPARED;
  }

  isChosen(key: string): boolean {
    return this.compared.some((each) => each.key === key);
  }

  /** Lays one more beside the others; with four of them nothing changes. */
  add(key: string): void {
    if (!this.hasRoom || this.isChosen(key)) return;
    // What was deleted or unpinned meanwhile gives its place back.
    const there = this.#chosen.filter((each) => this.isChosen(each.key));
    const slots = Array.from({ length: MOST_COMPARED }, (_, slot) => slot);
    const slot = slots.find((each) => !there.some((other) => other.slot === each)) ?? 0;
    this.#chosen = [...there, { key, slot }];
  }

  /** Takes one away; one always stays. */
  drop(key: string): void {
    if (this.compared.length > 1) this.#chosen = this.#chosen.filter((each) => each.key !== key);
  }

  /** Holds the others against this one; its letter and its line stay. */
  putFirst(key: string): void {
    const first = this.#chosen.filter((each) => each.key === key);
    this.#chosen = [...first, ...this.#chosen.filter((each) => each.key !== key)];
  }

  /** Lays another bike of the store beside the others as it is set now; from then on its sheets can be chosen too. */
  async addBike(store: BikeStore, id: string): Promise<void> {
    if ((await this.readBike(store, id)) !== null) this.add(id);
  }

  /** Reads another bike of the store with its sheets, so that they can be chosen; null where it could not be read. */
  async readBike(store: BikeStore, id: string): Promise<Comparable | null> {
    const { opened } = this.#bench.session;
    const [loaded, sheets] = [await store.load(id), await store.sheets(id)];
    if (opened !== this.#bench.session.opened) return null;
    const document = loaded.ok && loaded.value !== null ? openDocument(loaded.value.text) : null;
    if (document?.ok !== true || !sheets.ok) {
      const fault = !loaded.ok ? loaded : document?.ok === false ? document : sheets;
      this.unread = fault.ok ? 'That bike is no longer saved in this browser.' : fault.reason.sentence;
      return null;
    }
    const { bike, setup } = document.value.document;
    const other = { of: 'other', pinned: null } as const;
    const kept: Comparable[] = [];
    const leftOut: string[] = [];
    for (const { id: key, day, text } of sheets.value) {
      const opened = openSheet(text);
      if (opened.ok) {
        const { sheet } = opened.value;
        const name = `${bike.name}: ${sheetName(sheet)}`;
        kept.push({ ...other, key, name, bike: sheet.bike, setup: sheet.setup });
      } else leftOut.push(leftOutWords(bike.name, day, opened.reason.sentence));
    }
    this.unread = leftOut.length === 0 ? null : leftOut.join(' ');
    const asSet: Comparable = { ...other, key: id, name: bike.name, bike, setup };
    const read: Comparable[] = [asSet, ...kept.reverse()];
    const isRead = ({ key }: Comparable): boolean => read.some((each) => each.key === key);
    this.#others = [...this.#others.filter((each) => !isRead(each)), ...read];
    return asSet;
  }

  /** Sets one adjuster of the bike on the page as a setup has it, as one undo entry, or says why it cannot stand so. */
  take({ bike: theirs, setup: asked, letter, name }: Compared, key: AdjusterKey, label: string): void {
    const { session, standing } = this.#bench;
    const { bike, setup } = session.history.present;
    const taken = takeAdjuster(setup, asked, key);
    // A chain with an odd count needs its half link.
    const joins = key === 'chainLinks' && theirs.drive.halfLink && !bike.drive.halfLink;
    const made = joins ? { ...bike, drive: { ...bike.drive, halfLink: true } } : bike;
    const found = standing.stand({ bike: made, setup: taken });
    if (!('stance' in found)) {
      this.notTaken = { adjuster: key, letter, reason: found };
      return;
    }
    const edit = joins ? replaceSketched(session.history.present, made, taken) : null;
    const edited = edit ?? setAdjusters(session.history.present, taken);
    this.notTaken = edited.ok ? null : { adjuster: key, letter, reason: edited.reason };
    if (edited.ok) session.commit(() => edited, `${label} as in ${name}`);
  }

  /** Draws the outline of each on the side view, with its letter, until what is given back is called. */
  showOutlines(): () => void {
    const { drawing } = this.#bench;
    const before = drawing.ghosts;
    const both = (): readonly Ghost[] => [...before(), ...this.#outlines];
    drawing.drawGhosts = ghostDrawing;
    drawing.ghosts = both;
    return () => {
      // A panel that came meanwhile has put its own there.
      if (drawing.ghosts === both) drawing.ghosts = before;
    };
  }
}
