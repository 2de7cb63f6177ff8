/** What every panel below the side view is given. */
import type { LateKeeping } from '../../session/keeping/late-keeping.svelte.ts';
import type { Workbench } from '../../session/workbench.svelte.ts';

export interface PanelProps {
  readonly bench: Workbench;
  /** Keeping, which comes after the first sight. */
  readonly late: LateKeeping;
}
