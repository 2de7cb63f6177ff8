/** A bike from its papers: a type of bike and the few figures that papers give make a bike to work on. */
import type { MeasureKindKey } from '../../core/measure/kinds/all-kinds.ts';
import type { MeasurePartKey } from '../../core/measure/held/measure-parts.ts';
import type { NoMeasure } from '../../core/measure/no-measure.ts';
import { fail, succeed, type Result } from '../../core/numeric/result.ts';
import type { Bike } from '../../core/parts/bike.ts';
import { DEMO_BIKES } from '../../document/demos/demo-bikes.ts';
import type { BikeDocument } from '../../document/document.ts';
import { describeBike, renameBike, setBaseline } from '../../document/edits.ts';
import { setMeasure } from '../../document/set-measure.ts';
import type { KeptRow } from '../../document/measure.ts';
import type { TapeFit } from './tape-fit.ts';
import { newRow, partsFor } from './tape-rows.ts';
import { withFound } from './tape.svelte.ts';

interface Asked {
  readonly label: string;
  readonly kind: MeasureKindKey;
  readonly parts: readonly MeasurePartKey[];
}

/** What papers give, in the order in which they mostly do. */
const ASKED: readonly Asked[] = [
  { label: 'Rake', kind: 'paperRake', parts: [] },
  { label: 'Trail', kind: 'paperTrail', parts: [] },
  { label: 'Wheelbase', kind: 'paperWheelbase', parts: [] },
  { label: 'Front tyre size', kind: 'tyreCode', parts: ['frontWheel'] },
  { label: 'Rear tyre size', kind: 'tyreCode', parts: ['rearWheel'] },
  { label: 'Teeth, front sprocket', kind: 'toothCount', parts: ['frontSprocket'] },
  { label: 'Teeth, rear sprocket', kind: 'toothCount', parts: ['rearSprocket'] },
];

export interface PaperRow {
  readonly id: number;
  readonly label: string;
  readonly kind: MeasureKindKey;
  readonly row: KeptRow;
}

/** Why no bike was made: a row that cannot be, with its label where one is to blame, or a sentence. */
export type NoPaperBike =
  { readonly why: NoMeasure; readonly label: string | null } | { readonly sentence: string };

export class Papers {
  /** The type of bike, by its place among them. */
  type = $state(0);
  name = $state('');
  #typed = $state.raw<Readonly<Record<number, Pick<KeptRow, 'figure' | 'unit'>>>>({});

  readonly types: readonly Bike[] = DEMO_BIKES.map(({ bike }) => bike);
  readonly #bike: Bike = $derived.by(() => DEMO_BIKES[this.type].bike);
  /** A row for each figure that this type of bike can have. */
  readonly rows: readonly PaperRow[] = $derived.by(() =>
    ASKED.flatMap(({ label, kind, parts }, id) => {
      const has = parts.every((part, place) => partsFor(kind, place, this.#bike).includes(part));
      const row = { ...newRow(kind, this.#bike), parts, ...this.#typed[id] };
      return has ? [{ id, label, kind, row }] : [];
    }),
  );
  /** How many figures have been typed. */
  readonly count: number = $derived.by(() => this.rows.filter(({ row }) => row.figure !== '').length);

  fill(id: number, figure: Pick<KeptRow, 'figure' | 'unit'>): void {
    this.#typed = { ...this.#typed, [id]: figure };
  }

  /** Forgets what was typed: the next bike has other papers. */
  clear(): void {
    this.name = '';
    this.#typed = {};
  }

  /** The bike that the papers and its type make, with the rows kept; `names` says what it is called. */
  make(
    { settledFit }: Pick<TapeFit, 'settledFit'>,
    names: { readonly name: string; readonly about: string },
  ): Result<BikeDocument, NoPaperBike> {
    const from = DEMO_BIKES[this.type];
    const typed = this.rows.filter(({ row }) => row.figure !== '');
    const rows = typed.map(({ row }) => row);
    const measured = setMeasure(from, { gaugeZeroed: true, setup: from.setup, rows });
    if (!measured.ok) return fail(measured.reason);
    const { measure } = measured.value;
    if (measure === undefined) return fail({ sentence: 'Type at least one figure.' });
    const { found, fates } = settledFit(measure, from);
    const refused = fates.find((fate) => fate.kind === 'refused');
    const why = refused?.why ?? (found?.ok === false ? found : null);
    if (why !== null) return fail({ why, label: why.row === null ? null : typed[why.row].label });
    if (found?.ok !== true) return fail({ sentence: 'Type at least one figure.' });
    const taken = withFound(measured.value, found);
    if (!taken.ok) return fail(taken.reason);
    const named = renameBike(taken.value, names.name);
    if (!named.ok) return fail(named.reason);
    const described = describeBike(named.value, names.about);
    return described.ok ? succeed(setBaseline(described.value)) : fail(described.reason);
  }
}
