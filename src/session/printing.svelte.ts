/** What is about to be printed: which page, and whose setup sheet. */
import type { Sheet } from '../document/sheet.ts';

export type PaperKind = 'customer' | 'workshop' | 'sheet';

export class Printing {
  /** Whether the choice of pages is open. */
  open = $state(false);
  kind = $state<PaperKind>('customer');
  /** The kept sheet to print; null for the bike as it is set now. */
  sheet = $state.raw<Sheet | null>(null);

  /** Opens the choice of pages. */
  begin(): void {
    this.sheet = null;
    this.open = true;
  }

  /** Opens it at the page of a kept sheet. */
  beginSheet(sheet: Sheet): void {
    this.sheet = sheet;
    this.kind = 'sheet';
    this.open = true;
  }

  end(): void {
    this.open = false;
  }
}
