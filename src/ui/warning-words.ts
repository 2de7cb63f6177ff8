/** The warnings about a bike as it stands, each with the number behind it, in plain sentences. */
import { forkTubeSpare } from '../core/readings/fork-tube-spare.ts';
import type { Reading } from '../core/readings/reading.ts';
import { topRunPivotGap } from '../core/readings/top-run-pivot-gap.ts';
import { trail } from '../core/readings/trail.ts';
import { tyreToClampGap } from '../core/readings/tyre-to-clamp-gap.ts';
import { warningsFor, type Warning } from '../core/readings/warnings.ts';
import type { StandingBike } from '../core/springs/stand-bike.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';

export interface WarningWords {
  readonly key: Warning;
  /** The reading behind it with its number, such as "Trail 61.0 mm". */
  readonly lead: string;
  /** What is the matter, and what to do. */
  readonly text: string;
  /** What is the matter, in one line beside the Stand after the reading. */
  readonly short: string;
}

const READING_BEHIND: Readonly<Record<Warning, Reading>> = {
  steepAndShort: trail,
  tubeTooShort: forkTubeSpare,
  tyreHitsClamp: tyreToClampGap,
  chainOnGuide: topRunPivotGap,
};

function textOf(warning: Warning, on: StandingBike): string {
  switch (warning) {
    case 'steepAndShort':
      return Number(trail.read(on)) > 0
        ? 'Little trail: the steering centres itself weakly and can shake its head at speed. Add trail before riding it.'
        : 'The steering does not centre itself. Do not ride like this.';
    case 'tubeTooShort':
      return 'The clamps hold less fork tube than the maker’s manual asks for. Slide the tubes further up through the clamps before riding it.';
    case 'tyreHitsClamp':
      return 'The front tyre meets the lower clamp before the fork is fully in. Slide the tubes down in the clamps, or end the travel earlier, before riding it.';
    case 'chainOnGuide':
      return `The ${on.machine.driveKind} lies on the guide over the pivot and wears it. A bigger front sprocket or a steeper swingarm lifts it off.`;
  }
}

function shortOf(warning: Warning, on: StandingBike): string {
  switch (warning) {
    case 'steepAndShort':
      return Number(trail.read(on)) > 0
        ? 'little, the steering can shake its head.'
        : 'the steering does not centre itself. Do not ride like this.';
    case 'tubeTooShort':
      return 'too little tube in the clamps. Do not ride like this.';
    case 'tyreHitsClamp':
      return 'the tyre meets the clamp under hard braking.';
    case 'chainOnGuide':
      return `the ${on.machine.driveKind} wears its guide.`;
  }
}

/** The warnings in words, the gravest first. */
export function warningWords(on: StandingBike, style: NumberStyle): WarningWords[] {
  return warningsFor(on).map((key) => {
    const reading = READING_BEHIND[key];
    const value = reading.read(on);
    const number = typeof value === 'number' ? ` ${writeNumber(value, reading.quantity, style).text}` : '';
    return { key, lead: `${reading.label}${number}`, text: textOf(key, on), short: shortOf(key, on) };
  });
}
