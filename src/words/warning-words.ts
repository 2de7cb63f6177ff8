/** The warnings about a bike as it stands, each with the number behind it, in plain sentences. */
import { forkTubeSpare } from '../core/readings/fork-tube-spare.ts';
import type { Reading } from '../core/readings/reading.ts';
import { chainSliderClearance } from '../core/readings/chain-slider-clearance.ts';
import { trail } from '../core/readings/trail.ts';
import { tyreToClampGap } from '../core/readings/tyre-to-clamp-gap.ts';
import { hasRuns } from '../core/parts/drive-kind.ts';
import { pairObstacleWords } from './pair-obstacle-words.ts';
import { pairObstacle } from '../core/chain/pair-obstacle.ts';
import { warningsFor, type Warning } from '../core/readings/warnings.ts';
import type { Drive } from '../core/parts/bike.ts';
import type { StandingBike } from '../core/riding/stand-bike.ts';
import { writeNumber, type NumberStyle } from '../core/units/number-style.ts';

export interface WarningWords {
  readonly key: Warning | 'sprocketInTheWay';
  /** The reading behind it with its number, such as "Trail 61.0 mm"; or the sprocket that is in the way. */
  readonly lead: string;
  /** What is the matter, and what to do. */
  readonly text: string;
  /** What is the matter, in one line beside the side view after the reading. */
  readonly short: string;
}

const READING_BEHIND: Readonly<Record<Warning, Reading>> = {
  steepAndShort: trail,
  tubeTooShort: forkTubeSpare,
  tyreHitsClamp: tyreToClampGap,
  chainOnGuide: chainSliderClearance,
};

function textOf(warning: Warning, on: StandingBike): string {
  switch (warning) {
    case 'steepAndShort':
      return Number(trail.read(on)) > 0
        ? 'Little trail: the steering centres itself weakly and can shake its head at speed. Add trail before riding it.'
        : 'The steering does not centre itself. Do not ride like this.';
    case 'tubeTooShort':
      return 'The clamps hold less fork tube than the maker’s manual gives as the least. Slide the tubes further up through the clamps before riding it.';
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
      return 'they touch.';
    case 'chainOnGuide':
      return `the ${on.machine.driveKind} wears its guide.`;
  }
}

/** The warnings in words: first what cannot be built at all, then the gravest. */
export function warningWords(on: StandingBike, drive: Drive, style: NumberStyle): WarningWords[] {
  const ofReadings = warningsFor(on).map((key): WarningWords => {
    const reading = READING_BEHIND[key];
    const value = reading.read(on);
    const number = typeof value === 'number' ? ` ${writeNumber(value, reading.quantity, style).text}` : '';
    return { key, lead: `${reading.label}${number}`, text: textOf(key, on), short: shortOf(key, on) };
  });
  return [...sprocketInTheWay(on, drive), ...ofReadings];
}

function sprocketInTheWay({ machine }: StandingBike, drive: Drive): WarningWords[] {
  const obstacle = hasRuns(drive.kind)
    ? pairObstacle(machine, drive.chainPitch, drive.leastFrontTeeth)
    : null;
  if (obstacle === null) return [];
  const { reason, found, nearest } = obstacle;
  const end = reason === 'pivotInsideRear' ? 'Rear' : 'Front';
  const short =
    reason === 'frontBelowShaft' ? 'does not go over the countershaft.' : 'reaches over the swingarm pivot.';
  const advice = nearest === null ? '' : ` Fit ${nearest} teeth.`;
  return [
    {
      key: 'sprocketInTheWay',
      lead: `${end} sprocket ${found} teeth`,
      text: pairObstacleWords(obstacle),
      short: `${short}${advice}`,
    },
  ];
}
