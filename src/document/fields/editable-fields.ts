/** The bike's fields that a person can type a number into, as a list from which a form is made. */
import type { Bike } from '../../core/parts/bike.ts';
import { nameDrive, type DriveNoun, type DriveText } from '../../core/parts/drive-noun.ts';
import type { QuantityKey } from '../../core/units/all-quantities.ts';
import { BIKE_PART } from './bike-fields.ts';
import { anyPart, type AnyPart, type Bounds } from './field.ts';
import { isJsonObject } from '../json/json.ts';

export type FieldGroup =
  'frame' | 'fork' | 'swingarm' | 'shock' | 'rearBrake' | 'housing' | 'frontWheel' | 'rearWheel' | 'drive';

export const FIELD_GROUPS: readonly { readonly key: FieldGroup; readonly label: string }[] = [
  { key: 'frame', label: 'Frame' },
  { key: 'fork', label: 'Fork' },
  { key: 'swingarm', label: 'Swingarm' },
  { key: 'shock', label: 'Shock' },
  { key: 'frontWheel', label: 'Front wheel' },
  { key: 'rearWheel', label: 'Rear wheel' },
  { key: 'drive', label: 'Drive' },
  { key: 'housing', label: 'Shaft’s housing' },
  { key: 'rearBrake', label: 'Rear brake' },
];

export interface BikeField {
  /** From the bike down, such as `frame.steeringHead.x`. */
  readonly path: string;
  readonly label: DriveText;
  readonly group: FieldGroup;
  /** Its number in the file is the metric number of this quantity. */
  readonly quantity: QuantityKey;
  readonly bounds: Bounds;
  readonly help: DriveText;
}

/** What a field is called on a bike with this drive, and its help. */
export function nameField(
  { label, help }: BikeField,
  drive: DriveNoun,
): { readonly label: string; readonly help: string } {
  return { label: nameDrive(label, drive), help: nameDrive(help, drive) };
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function fieldsBelow(each: AnyPart, path: string, group: FieldGroup): BikeField[] {
  return Object.entries(each.fields).flatMap(([key, field]): BikeField[] => {
    const at = `${path}.${key}`;
    if (field.kind === 'part') return fieldsBelow(field, at, group);
    const { words, help, ofDrive, quantity, bounds } = field;
    if (quantity === null || bounds === null) return [];
    const texts =
      ofDrive === undefined
        ? { label: capital(words), help }
        : {
            label: (drive: DriveNoun) => capital(ofDrive(drive).words),
            help: (drive: DriveNoun) => ofDrive(drive).help,
          };
    return [{ path: at, ...texts, group, quantity, bounds }];
  });
}

/** In the order of the file. The pivot is not among them: it is where the frame is measured from. */
export const BIKE_FIELDS: readonly BikeField[] = FIELD_GROUPS.flatMap(({ key }) => {
  const field = anyPart(BIKE_PART).fields[key];
  return field.kind === 'part' ? fieldsBelow(field, key, key) : [];
});

/** The number a bike has in a field of the list; null where the field is empty. */
export function bikeFieldValue(bike: Bike, { path }: BikeField): number | null {
  const value = path.split('.').reduce<unknown>((at, key) => (isJsonObject(at) ? at[key] : undefined), bike);
  return typeof value === 'number' ? value : null;
}
