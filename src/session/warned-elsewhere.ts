/** What the bike is warned of in other ride states than the one shown; fetched after the first sight. */
import { rideStateOf, RIDE_STATES, type RideStateKey } from '../core/riding/states/all-ride-states.ts';
import { standBike } from '../core/riding/stand-bike.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import type { BikeDocument } from '../document/document.ts';
import { gravestFirst, warningWords, type WarningWords } from '../words/trouble/warning-words.ts';

/** The warnings of one bike in each ride state in which it stands, by that state. */
export type WarnedInStates = readonly (readonly [RideStateKey, readonly WarningWords[]])[];

/** Every warning of a bike in every ride state but the travel set by hand, which no ride gives. */
export function warnedInStates({ bike, setup }: BikeDocument, style: NumberStyle): WarnedInStates {
  const rested = standBike(bike, setup, 'riderUp');
  return RIDE_STATES.filter(({ key }) => key !== 'travelByHand').flatMap(({ key }) => {
    const stance = standBike(bike, setup, key);
    if (!stance.ok) return [];
    const judged = rested.ok ? rested : stance;
    return [[key, warningWords({ bike, setup, stance, rested: judged }, style)] as const];
  });
}

/**
 * The warnings of the state shown; behind them each that only other states have, once, with the first such state named; wear
 * of parts last.
 * Where the chain lies on its slider already, the warning about a hanging wheel is left out.
 */
export function withElsewhere(
  shown: readonly WarningWords[],
  inStates: WarnedInStates,
): readonly WarningWords[] {
  const told = new Set(shown.map(({ key }) => key));
  if (told.has('chainOnGuide') || told.has('chainOnGuideHanging')) {
    told.add('chainOnGuide');
    told.add('chainOnGuideHanging');
  }
  const elsewhere: WarningWords[] = [];
  for (const [state, warnings] of inStates)
    for (const warning of warnings) {
      if (told.has(warning.key)) continue;
      told.add(warning.key);
      elsewhere.push({ ...warning, lead: `${warning.lead}, ${rideStateOf(state).label.toLowerCase()}` });
    }
  return gravestFirst([...shown, ...elsewhere]);
}
