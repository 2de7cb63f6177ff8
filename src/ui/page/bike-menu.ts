/** The entries of the list of bikes: the one on the page, its other versions, the stored ones, and the demonstrations. */
import type { BikeDocument } from '../../document/document.ts';
import type { BikeSummary } from '../../storage/bike-store.ts';

/** What an entry brings to the page; null for the bike that is there. */
export type BikeChoice =
  | { readonly kind: 'stored'; readonly id: string }
  | { readonly kind: 'other'; readonly writer: string }
  | { readonly kind: 'demo'; readonly document: BikeDocument }
  | null;

export interface BikeEntry {
  readonly key: string;
  readonly label: string;
  readonly choice: BikeChoice;
}

const SAVED_AT = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
});

/** Bikes of the same name are told apart by when they were saved. `bikeId` is null for one that no store holds. */
export function bikeEntries(
  bikeId: string | null,
  name: string,
  bikes: readonly BikeSummary[],
  others: readonly BikeSummary[],
  demos: readonly BikeDocument[],
): readonly BikeEntry[] {
  const stored = bikes.filter(({ id }) => id !== bikeId);
  const names = [name, ...stored.map((bike) => bike.name)];
  const isShared = (one: string): boolean => names.indexOf(one) !== names.lastIndexOf(one);
  return [
    // The bike on the page goes by its present name, whether or not it has been saved yet.
    { key: bikeId ?? 'current', label: name, choice: null },
    ...others.map(({ writer, savedAt }) => ({
      key: `other-${writer}`,
      label: `Other version, saved ${SAVED_AT.format(savedAt)}`,
      choice: { kind: 'other' as const, writer },
    })),
    ...stored.map((bike) => ({
      key: bike.id,
      label: isShared(bike.name) ? `${bike.name}, saved ${SAVED_AT.format(bike.savedAt)}` : bike.name,
      choice: { kind: 'stored' as const, id: bike.id },
    })),
    ...demos.map((document, index) => ({
      key: `demo-${index}`,
      label: `New from demo: ${document.bike.name}`,
      choice: { kind: 'demo' as const, document },
    })),
  ];
}
