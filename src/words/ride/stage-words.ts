/** Where a spring of two stages changes over, in a mechanic's words. */
import type { MainSpring } from '../../core/parts/support.ts';
import { changeoverStroke, type CurvedSpring } from '../../core/springs/main-spring.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';

/**
 * One sentence, or none for a spring without stages. A changeover that preload has passed, or that the stroke never
 * reaches, is no fault: it says which rate works.
 */
export function stageWords(
  kind: MainSpring['kind'],
  spring: CurvedSpring,
  stroke: number,
  of: 'fork' | 'shock',
  style: NumberStyle,
): string {
  if (kind !== 'inSeries' && kind !== 'twoRates') return '';
  const at = changeoverStroke(spring);
  const mm = (value: number): string => writeNumber(value, 'length', style).text;
  const way = of === 'fork' ? 'fork travel' : 'shock stroke';
  if (at === null) return 'The springs never change over: neither is coil-bound.';
  if (at <= 0) return `The preload has passed the changeover by ${mm(-at)}: only the second rate works.`;
  if (at >= stroke)
    return `The changeover is never reached: it lies at ${mm(at)} of ${mm(stroke)} of ${way}.`;
  return `The second rate begins at ${mm(at)} of ${mm(stroke)} of ${way}.`;
}
