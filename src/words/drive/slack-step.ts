/** The step that ends work on sprockets, chain or axle: the slack is set again, with the wheel hanging. */
import type { AdjusterKey } from '../../core/adjusters/setup.ts';
import { MACHINE_PART_ADJUSTERS } from '../../core/adjusters/machine-part-adjusters.ts';
import type { WalkStep } from '../../core/effects/walk.ts';
import { hasRuns, type DriveKind } from '../../core/parts/drive-kind.ts';
import { driveNoun } from '../../core/parts/drive-noun.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';

/** After these the slack is another one for certain. */
const ON_THE_CHAIN: readonly AdjusterKey[] = [...MACHINE_PART_ADJUSTERS.onSprockets, 'axlePosition'];

/** These move the hanging axle too, so the slack is set once they are done. */
const AT_THE_REAR: readonly AdjusterKey[] = [...ON_THE_CHAIN, ...MACHINE_PART_ADJUSTERS.rear];

export interface SlackStep {
  /** The place of the step that it follows. */
  readonly after: number;
  readonly words: string;
}

/**
 * What to do about the slack on the way between two setups, behind the last step at the rear; null where neither sprockets
 * nor chain nor axle are touched, and with a shaft or hub drive. The figures are those of a chain whose length is known.
 */
export function slackStep(steps: readonly WalkStep[], kind: DriveKind, style: NumberStyle): SlackStep | null {
  const touches = (keys: readonly AdjusterKey[]) => (step: WalkStep) =>
    step.turned.some((key) => keys.includes(key));
  if (!hasRuns(kind) || !steps.some(touches(ON_THE_CHAIN))) return null;
  const after = steps.findLastIndex(touches(AT_THE_REAR));
  const { setup, on } = steps[after];
  const { loop } = driveNoun(kind);
  const length = (value: number): string => writeNumber(value, 'length', style).text;
  if (setup.chainLinks === null || on === null)
    return {
      after,
      words: `Set the ${loop}’s slack with the wheel hanging, by the manual. Align the wheel.`,
    };
  const { arm, slotFrontArm } = on.machine.rear;
  return {
    after,
    words: `Set the ${loop}’s slack with the wheel hanging: ${length(setup.chainSlack)} up and down. The axle then stands ${length(arm - slotFrontArm)} back in its slot. Align the wheel.`,
  };
}
