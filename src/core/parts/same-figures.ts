/** Whether two bikes are the same in every figure, whatever they are called and however their bodywork is drawn. */
import type { Bike } from './bike.ts';

/** All but name, notes, whether it is invented, and bodywork is a figure. */
export function haveSameFigures(one: Bike, other: Bike): boolean {
  const { name, about, invented, bodywork } = other;
  return isSame({ ...one, name, about, invented, bodywork }, other);
}

function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  const mine = Object.entries(one);
  const theirs = new Map<string, unknown>(Object.entries(other));
  return (
    mine.length === theirs.size &&
    mine.every(([key, value]) => theirs.has(key) && isSame(value, theirs.get(key)))
  );
}
