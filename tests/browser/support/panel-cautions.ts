/** Which caution belongs to which part of the page. */
import {
  CAUTION_AXLE,
  CAUTION_CHAIN,
  CAUTION_EDIT,
  CAUTION_PLAN,
  CAUTION_SPRINGS,
  CAUTION_SPROCKETS,
} from '../../../src/ui/controls/panel-cautions.ts';

/** The tabs below the side view at which hands go to the bike. */
export const TAB_CAUTIONS = [
  { tab: 'Springs', cautions: [CAUTION_SPRINGS] },
  { tab: 'Chain', cautions: [CAUTION_CHAIN, CAUTION_AXLE] },
  { tab: 'Sprockets', cautions: [CAUTION_SPROCKETS] },
  { tab: 'Find a setup', cautions: [CAUTION_PLAN] },
] as const;

export { CAUTION_EDIT };
