/** How two setups of a bike differ, adjuster by adjuster, in words. */
import { isAdjusterChanged } from '../../core/adjusters/changed-adjusters.ts';
import { namedAdjusters, type NamedAdjuster } from '../../core/adjusters/named-adjusters.ts';
import type { AdjusterKey, Setup } from '../../core/adjusters/setup.ts';
import type { DriveKind } from '../../core/parts/drive-kind.ts';
import type { Tyre } from '../../core/parts/tyre.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';

/** An adjuster that differs, with both settings as they are written. */
export interface SettingDifference {
  readonly key: AdjusterKey;
  readonly label: string;
  readonly from: string;
  readonly to: string;
}

/** The adjusters that stand differently in `to` than in `from`, in the order of the list. */
export function settingDifferences(
  from: Setup,
  to: Setup,
  kind: DriveKind,
  style: NumberStyle,
): SettingDifference[] {
  return namedAdjusters(kind).flatMap((adjuster): SettingDifference[] => {
    const { key, label } = adjuster;
    if (!isAdjusterChanged(key, to, from)) return [];
    return [{ key, label, from: settingWords(adjuster, from, style), to: settingWords(adjuster, to, style) }];
  });
}

/** Where an adjuster stands, such as "3.0 mm" or a tyre's size code. */
export function settingWords(
  adjuster: NamedAdjuster,
  setup: Setup,
  style: NumberStyle,
  extraDigits = 0,
): string {
  if (adjuster.holds === 'tyre') return tyreWords(setup[adjuster.key], style);
  const value = setup[adjuster.key];
  return value === null
    ? 'axle set by hand'
    : writeNumber(value, adjuster.quantity, style, { extraDigits }).text;
}

/** Such as "Shock length 0.0 mm → 3.0 mm, Front sprocket 15 → 16"; empty where nothing differs. */
export function differencesInLine(differences: readonly SettingDifference[]): string {
  return differences.map(({ label, from, to }) => `${label} ${from} → ${to}`).join(', ');
}

/** Such as "190/55-17", or how large it was measured. */
export function tyreWords(tyre: Tyre, style: NumberStyle): string {
  if ('code' in tyre) return tyre.code;
  if ('diameter' in tyre) return `${writeNumber(tyre.diameter, 'length', style).text} across`;
  return `${writeNumber(tyre.circumference, 'length', style).text} round the tread`;
}
