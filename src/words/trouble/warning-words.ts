/** The warnings about a bike as it stands, each with the number behind it, in plain sentences. */
import { forkTubeSpare } from '../../core/readings/fork-tube-spare.ts';
import type { Reading } from '../../core/readings/reading.ts';
import { chainSliderClearance } from '../../core/readings/chain-slider-clearance.ts';
import { lowerRunClearance } from '../../core/readings/lower-run-clearance.ts';
import { trail } from '../../core/readings/trail.ts';
import { tyreToClampGap } from '../../core/readings/tyre-to-clamp-gap.ts';
import { driveNoun } from '../../core/parts/drive-noun.ts';
import { hasRuns } from '../../core/parts/drive-kind.ts';
import { pairObstacleWords } from './pair-obstacle-words.ts';
import { pairObstacle } from '../../core/chain/pair-obstacle.ts';
import { warningsFor, type Warning } from '../../core/readings/warnings.ts';
import { frontSprocketHeight } from '../../core/readings/front-sprocket-height.ts';
import { wheelbase } from '../../core/readings/wheelbase.ts';
import { adjusterLabel } from '../../core/adjusters/named-adjusters.ts';
import type { AdjusterKey, Setup } from '../../core/adjusters/setup.ts';
import { adjustersOutOfRange } from '../../core/standing/adjusters-out-of-range.ts';
import type { Bike, Drive } from '../../core/parts/bike.ts';
import type { StandingBike } from '../../core/riding/stand-bike.ts';
import { TOUCH_PARTS } from '../../core/parts/touch-parts.ts';
import { groundClearance } from '../../core/readings/ground-clearance.ts';
import { lowestUpright } from '../../core/standing/touch-height.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';

export interface WarningWords {
  readonly key: Warning | 'sprocketInTheWay' | 'chainBarTight' | 'notFetched' | AdjusterKey;
  /** The reading behind it with its number, such as "Trail 61.0 mm"; or the part that is in the way. */
  readonly lead: string;
  /** What is the matter, and what to do. */
  readonly text: string;
  /** What is the matter, in one line beside the side view after the reading. */
  readonly short: string;
}

/** A warning in words: what it is about, and how it is said. */
interface Told {
  readonly lead: (on: StandingBike, style: NumberStyle) => string;
  readonly text: (on: StandingBike, style: NumberStyle) => string;
  readonly short: (on: StandingBike) => string;
}

const ofReading =
  (reading: Reading) =>
  (on: StandingBike, style: NumberStyle): string => {
    const value = reading.read(on);
    const number = typeof value === 'number' ? ` ${writeNumber(value, reading.quantity, style).text}` : '';
    return `${reading.label}${number}`;
  };

const length = (mm: number, style: NumberStyle): string => writeNumber(mm, 'length', style).text;

const cannotBe = () => 'no bike can have these figures. Check them.';

function lowestPart(on: StandingBike): string {
  const found = lowestUpright(on);
  return found === null ? 'part' : TOUCH_PARTS[found.key].label.toLowerCase();
}

const TOLD: Readonly<Record<Warning, Told>> = {
  pivotInTyre: {
    lead: ({ machine }, style) => `Swingarm ${length(machine.rear.arm, style)} from pivot to axle`,
    text: ({ machine }, style) =>
      `The rear tyre, ${length(machine.rearRadius, style)} from its axle, would reach past the swingarm pivot. Check pivot, axle and tyre.`,
    short: cannotBe,
  },
  tyresOverlap: {
    lead: ofReading(wheelbase),
    text: ({ machine }, style) =>
      `The tyres would reach into one another: their axles need ${length(machine.frontRadius + machine.rearRadius, style)} between them. Check axles and tyres.`,
    short: cannotBe,
  },
  frontSprocketOnGround: {
    lead: ofReading(frontSprocketHeight),
    text: () => 'The front sprocket would reach the ground. Check the countershaft’s place.',
    short: cannotBe,
  },
  rearSprocketOnGround: {
    lead: ({ machine }) => `Rear sprocket ${machine.rearTeeth} teeth`,
    text: ({ machine }, style) =>
      `The rear sprocket, ${length(machine.rearSprocketRadius, style)} from its axle, would reach the ground ${length(machine.rearRadius, style)} below it. Check teeth, pitch and tyre.`,
    short: cannotBe,
  },
  tubeOutOfClamp: {
    lead: ({ machine }, style) =>
      `Fork tubes ${length(-machine.front.tubeAbove, style)} below the clamp’s top`,
    text: () =>
      'The top clamp [top yoke] holds the fork tubes with part of its height only. Do not ride like this: slide the tubes further up through the clamps first.',
    short: () => 'too little tube in the clamps. Do not ride like this.',
  },
  steepAndShort: {
    lead: ofReading(trail),
    text: (on) =>
      Number(trail.read(on)) > 0
        ? 'Little trail: the steering centres itself weakly and can shake its head at speed. Add trail before riding it.'
        : 'The steering does not centre itself. Do not ride like this.',
    short: (on) =>
      Number(trail.read(on)) > 0
        ? 'little, the steering can shake its head.'
        : 'does not centre the steering. Do not ride like this.',
  },
  tubeTooShort: {
    lead: ofReading(forkTubeSpare),
    text: () =>
      'The clamps hold less fork tube than the maker’s manual gives as the least. Do not ride like this: slide the tubes further up through the clamps first.',
    short: () => 'too little tube in the clamps. Do not ride like this.',
  },
  tyreHitsClamp: {
    lead: ofReading(tyreToClampGap),
    text: () =>
      'Do not ride like this: the front tyre hits the lower clamp before the fork is fully in. Slide the tubes down in the clamps, or limit the fork’s travel.',
    short: () => 'the tyre hits it.',
  },
  chainOnGuide: {
    lead: ofReading(chainSliderClearance),
    text: ({ machine }) =>
      `The ${machine.driveKind} lies on the ${driveNoun(machine.driveKind).sliderInFull} over the pivot and wears it. A bigger front sprocket lifts it off.`,
    short: ({ machine }) =>
      `the ${machine.driveKind} lies on the ${driveNoun(machine.driveKind).slider} over the pivot.`,
  },
  chainOnGuideHanging: {
    lead: ({ machine }) => `${driveNoun(machine.driveKind).Loop} with the wheel hanging`,
    text: ({ machine }) => {
      const { loop, sliderInFull } = driveNoun(machine.driveKind);
      return `Clear now, but with the wheel hanging the ${loop} lies on the ${sliderInFull} over the pivot and wears it. A bigger front sprocket or a shorter shock lifts it off.`;
    },
    short: ({ machine }) => `it lies on the ${driveNoun(machine.driveKind).slider} over the pivot.`,
  },
  lowerRunOnGuide: {
    lead: ofReading(lowerRunClearance),
    text: ({ machine }) =>
      `With the throttle closed the ${machine.driveKind}’s lower run lies on the ${driveNoun(machine.driveKind).sliderInFull} under the pivot and wears it. A bigger front sprocket or a steeper swingarm takes it off.`,
    short: ({ machine }) =>
      `the ${machine.driveKind} wears its lower ${driveNoun(machine.driveKind).slider}.`,
  },
  partOnGround: {
    lead: ofReading(groundClearance),
    text: (on) =>
      `Upright, the ${lowestPart(on)} would already be on the ground. Do not ride like this: raise the bike, or check the part’s place in Edit.`,
    short: (on) => `the ${lowestPart(on)} is on the ground.`,
  },
};

/** A bike as it stands, of which a rider may have to be warned. */
export interface Warned {
  readonly bike: Bike;
  readonly setup: Setup;
  readonly stance: StandingBike;
  /** At rest with the rider on board, by which the trail is judged; the stance itself where it does not stand so. */
  readonly rested: StandingBike;
}

/** The warnings in words: first what cannot be built at all, then the gravest. */
export function warningWords({ bike, setup, stance, rested }: Warned, style: NumberStyle): WarningWords[] {
  const ofStance = warningsFor(stance, rested).map((key): WarningWords => {
    const { lead, text, short } = TOLD[key];
    // The trail's own words speak of the bike by which it is judged.
    const on = key === 'steepAndShort' ? rested : stance;
    const where = on === stance ? '' : ', rider on board';
    return { key, lead: `${lead(on, style)}${where}`, text: text(on, style), short: short(on) };
  });
  return gravestFirst([
    ...sprocketInTheWay(stance, bike.drive),
    ...ofStance,
    ...outOfRange(bike, setup, style),
  ]);
}

/** Wear of parts: every other warning is graver. */
const WEAR: readonly WarningWords['key'][] = ['chainOnGuide', 'chainOnGuideHanging', 'lowerRunOnGuide'];

/** The same warnings, those of wear last. */
export function gravestFirst(warnings: readonly WarningWords[]): WarningWords[] {
  const isWear = ({ key }: WarningWords): boolean => WEAR.includes(key);
  return [...warnings.filter((each) => !isWear(each)), ...warnings.filter(isWear)];
}

/** As many as stand beside the side view. */
const MOST_IN_LINE = 2;

/** The gravest warnings beside the side view, which keeps its size so, the worst first; null where there is none. */
export function warningLine(warnings: readonly WarningWords[]): string | null {
  if (warnings.length === 0) return null;
  const told = warnings.slice(0, MOST_IN_LINE).map(({ lead, short }) => `${lead}: ${short}`);
  const more = warnings.length - told.length;
  return `${told.join(' ')}${more === 0 ? '' : ` And ${more} more, below the adjusters.`}`;
}

/** Adjusters that stand where no workshop sets them: a slip in a file, more often than a setup. */
function outOfRange(bike: Bike, setup: Setup, style: NumberStyle): WarningWords[] {
  return adjustersOutOfRange(bike, setup).map(({ adjuster, value, least, most }) => {
    const { quantity, key } = adjuster;
    const write = (amount: number): string => writeNumber(amount, quantity, style).text;
    const range = `its range goes from ${write(least)} to ${write(most)}.`;
    return {
      key,
      lead: `${adjusterLabel(key, bike.drive.kind)} ${write(value)}`,
      text: `${range.charAt(0).toUpperCase()}${range.slice(1)} Check the figure.`,
      short: range,
    };
  });
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
