/** Whether what is on the screen is kept, in the words of the notice that stays until it is. */
import type { StorageFault } from './storage-fault.ts';

export type SaveStatus =
  | { readonly state: 'saved'; readonly revision: number | null; readonly savedAt: number | null }
  | { readonly state: 'saving' }
  | { readonly state: 'full' | 'memoryOnly'; readonly sentence: string }
  | {
      readonly state: 'conflict';
      readonly sentence: string;
      /** The line of work of the other tab, kept among the bike's revisions under this writer. */
      readonly otherWriter: string;
      readonly otherSavedAt: number;
    };

/** The status while storage does not work: full storage is one to itself, because the user can make room. */
export function statusOf(fault: StorageFault): SaveStatus {
  return { state: fault.kind === 'full' ? 'full' : 'memoryOnly', sentence: fault.sentence };
}
