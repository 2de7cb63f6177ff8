/** The warning about a chain that has no slack left somewhere in its travel, in plain sentences. */
import { barTight } from '../../core/chain/bar-tight.ts';
import { adjusterLabel } from '../../core/adjusters/named-adjusters.ts';
import type { Bike } from '../../core/parts/bike.ts';
import type { Machine } from '../../core/standing/machine.ts';
import { writeNumber, type NumberStyle } from '../../core/units/number-style.ts';
import { gravestFirst, type WarningWords } from './warning-words.ts';

/** The warning, with the slack to set; null for a chain that keeps some slack everywhere. */
export function barTightWords({ drive }: Bike, made: Machine, style: NumberStyle): WarningWords | null {
  const found = barTight(made, drive.leastSlack);
  if (found === null) return null;
  const write = (mm: number): string => writeNumber(mm, 'length', style).text;
  const set = write(found.slackSet);
  const wanted = found.slackToSet === null ? null : write(found.slackToSet);
  const cure =
    wanted === null || wanted === set ? '' : ` By this model it needs ${wanted} with the wheel hanging.`;
  return {
    key: 'chainBarTight',
    lead: `${adjusterLabel('chainSlack', drive.kind)} ${set}`,
    text: `Do not ride like this: the chain goes bar tight ${write(found.rearTravel)} into the rear travel, and can break or bend the shafts.${cure} The lower the wheel hangs, the more slack it needs. Check the manual’s figure, measured the manual’s way.`,
    short: `the chain goes bar tight. Do not ride like this.`,
  };
}

/** That warning among the others: after what is graver, before wear. */
export function withBarTight(others: readonly WarningWords[], own: WarningWords | null): WarningWords[] {
  return own === null ? [...others] : gravestFirst([...others, own]);
}
