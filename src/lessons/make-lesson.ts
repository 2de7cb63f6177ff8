/** A lesson made from how a bike stands: from its baseline to its setup in one step, ready for its texts to be edited. */
import { ADJUSTERS } from '../core/adjusters/all-adjusters.ts';
import { doesApply } from '../core/adjusters/does-apply.ts';
import type { NumberAdjusterKey, Setup } from '../core/adjusters/setup.ts';
import { axleHeld, type AsSet, type Turn } from '../core/effects/turn.ts';
import { metricReading } from '../core/readings/metric-reading.ts';
import type { RideStateKey } from '../core/riding/states/all-ride-states.ts';
import { standBike } from '../core/riding/stand-bike.ts';
import type { NumberStyle } from '../core/units/number-style.ts';
import type { BikeWithSetup } from '../document/document.ts';
import { mostChanged } from '../words/change/most-changed.ts';
import { differencesInLine, settingDifferences } from '../words/change/setup-difference.ts';
import { readingsOf } from '../words/worded-readings.ts';
import type { FiledLesson } from './lesson-file.ts';
import type { LessonStep } from './lesson.ts';
import { tryStep } from './try-step.ts';

/** What a lesson that was just made looks at: of these the reading that changed most, and the others beside it. */
const SHOWN = ['rake', 'trail', 'swingarmAngle', 'antiSquat'];
/** What a step looks at where nothing changed yet. */
const FIRST_FIGURE = 'trail';
const FIRST_MINUTES = 10;

const NUMBERS = ADJUSTERS.filter(({ holds }) => holds === 'number' || holds === 'wholeNumber');

/** The state that a lesson is made of: a bike with what it is compared with, in a ride state. */
export interface LessonState {
  readonly now: BikeWithSetup;
  readonly baseline: Setup;
  readonly state: RideStateKey;
}

/**
 * A lesson whose bike stands as its baseline, with one step that turns it to its setup and looks at what changed most.
 * Tyres and a chain of named links are turned by no step: its bike has those of now. Always has an answer.
 */
export function makeLesson({ now, baseline, state }: LessonState, style: NumberStyle): FiledLesson {
  const { bike, setup } = axleHeld(now);
  const changed = NUMBERS.map(({ key }) => key as NumberAdjusterKey).filter(
    (key) =>
      setup[key] !== baseline[key] &&
      ADJUSTERS.some((each) => each.key === key && doesApply(each, bike, setup)),
  );
  const before: Setup = { ...setup, ...Object.fromEntries(changed.map((key) => [key, baseline[key]])) };
  const turns = changed.map((adjuster): Turn => ({ adjuster, by: setup[adjuster] - baseline[adjuster] }));
  const figure = changedMost({ bike, setup: before }, { bike, setup }, state, style);
  const line = differencesInLine(settingDifferences(before, setup, bike.drive.kind, style));
  const act = line === '' ? 'Say what is done here.' : `${line}.`;
  const asSet = { bike, setup: before };
  const step = withPoint({ act, turns, state, figure, point: null, because: '', otherwise: '' }, asSet);
  return {
    lesson: {
      key: 'made',
      title: `A lesson on ${bike.name}`,
      goal: '',
      minutes: FIRST_MINUTES,
      prepare: [],
      shows: SHOWN,
      steps: [step],
      check: { act: line === '' ? 'Say what would be done' : line, turns, state, figure },
      notes: [],
    },
    asSet,
  };
}

/** The step with the way that its figure goes on the lesson's bike; as it was where it cannot be made there. */
export function withPoint(step: LessonStep, asSet: AsSet): LessonStep {
  const tried = tryStep(asSet, step);
  return { ...step, point: tried.ok ? tried.way : step.point };
}

function changedMost(before: AsSet, after: AsSet, state: RideStateKey, style: NumberStyle): string {
  const [from, to] = [before, after].map(({ bike, setup }) => standBike(bike, setup, state));
  if (!from.ok || !to.ok) return FIRST_FIGURE;
  const [most] = mostChanged(
    readingsOf(after.bike.drive.kind)
      .filter(({ key }) => SHOWN.includes(key))
      .map((reading) => ({
        reading,
        before: metricReading(reading, from),
        now: metricReading(reading, to),
      })),
    style,
  );
  return most?.reading.key ?? FIRST_FIGURE;
}
