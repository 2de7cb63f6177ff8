/** Panels that the first sight of the page does not need: loaded right after it, and kept, so that no network is missed later. */
import { untrack, type Component } from 'svelte';
import type { LateKeeping } from '../../session/keeping/late-keeping.svelte.ts';
import type { Keeping } from '../../session/keeping/keeping.svelte.ts';
import type { Workbench } from '../../session/workbench.svelte.ts';
import type { PanelProps } from './panel-props.ts';
import { FIRST_TAB, TABS } from './tabs.ts';

/** How a panel is fetched. */
export interface Late<Panel> {
  readonly key: string;
  readonly load: () => Promise<{ readonly default: Panel }>;
}

export class LatePanels<Panel> {
  readonly #late: readonly Late<Panel>[];
  #panels = $state.raw<Readonly<Record<string, Panel | undefined>>>({});
  #failed = $state.raw<readonly string[]>([]);

  /** `late` in the order in which they are fetched. */
  constructor(late: readonly Late<Panel>[]) {
    this.#late = late;
  }

  /** The panel, or null while it is on its way or could not be fetched. */
  panel(key: string): Panel | null {
    return this.#panels[key] ?? null;
  }

  /** Whether the panel could not be fetched; `load` tries again. */
  hasFailed(key: string): boolean {
    return this.#failed.includes(key);
  }

  /** Fetches the panel unless it is here already. What this writes does not start the effect that asked for it anew. */
  load(key: string): Promise<void> {
    return untrack(() => this.#fetch(key));
  }

  async #fetch(key: string): Promise<void> {
    const late = this.#late.find((each) => each.key === key);
    if (late === undefined || this.#panels[key] !== undefined) return;
    this.#failed = this.#failed.filter((each) => each !== key);
    try {
      const { default: panel } = await late.load();
      this.#panels = { ...this.#panels, [key]: panel };
    } catch {
      // The browser's words for it differ and tell a person nothing; the page says it in its own.
      this.#failed = [...this.#failed, key];
    }
  }

  /** All of them, one after another, so that none is missed once the network is gone. */
  async loadAll(): Promise<void> {
    for (const { key } of this.#late) await this.load(key);
  }
}

/** The key of what stands in place of the adjusters while the bike is edited. */
export const EDIT = 'edit';

const [, ...otherTabs] = TABS;

export const latePanels = new LatePanels<Component<PanelProps>>([
  FIRST_TAB,
  { key: EDIT, load: () => import('../edit/bike-panel.svelte') },
  ...otherTabs,
]);

export interface DialogProps {
  readonly bench: Workbench;
  readonly keeping: Keeping;
  readonly open: boolean;
  readonly onclose: () => void;
}

/** The key of the list of bikes. */
export const BIKES = 'bikes';

/** The key of what sends a bike. */
export const SEND = 'send';

/** What opens over the page, fetched after the panels. */
export const lateDialogs = new LatePanels<Component<DialogProps>>([
  { key: BIKES, load: () => import('../bikes/bikes-dialog.svelte') },
  { key: SEND, load: () => import('../send/send-dialog.svelte') },
]);

export interface ProjectorProps {
  readonly bench: Workbench;
}

/** The key of the view for a room. */
export const PROJECTOR = 'projector';

export const lateViews = new LatePanels<Component<ProjectorProps>>([
  { key: PROJECTOR, load: () => import('../view/projector-view.svelte') },
]);

/** What shows changes larger on the side view, fetched when the page has settled; null when it could not be. */
async function fetchCloseUps(): Promise<typeof import('../../session/close-ups.svelte.ts') | null> {
  try {
    return await import('../../session/close-ups.svelte.ts');
  } catch {
    return null;
  }
}

/** What keeps fields above a screen's keyboard; null when it could not be fetched, and the browser does what it can. */
async function fetchAboveKeyboard(): Promise<typeof import('./above-keyboard.ts') | null> {
  try {
    return await import('./above-keyboard.ts');
  } catch {
    return null;
  }
}

export interface PrintProps {
  readonly bench: Workbench;
  readonly open: boolean;
  readonly onclose: () => void;
}

/** The key of the pages to print. */
export const PRINT = 'print';

/** What puts a ± to the readings of a measured bike; null when it could not be fetched. */
async function fetchPlusMinus(): Promise<typeof import('../../session/measure/plus-minus.svelte.ts') | null> {
  try {
    return await import('../../session/measure/plus-minus.svelte.ts');
  } catch {
    return null;
  }
}

/** The pages to print, fetched last. */
export const latePrint = new LatePanels<Component<PrintProps>>([
  { key: PRINT, load: () => import('../print/print-dialog.svelte') },
]);

export interface NoticeProps {
  readonly bench: Workbench;
  readonly late: LateKeeping;
}

/** The key of what keeps the page on the device. */
export const OFFLINE = 'offline';

/** The key of what keeping tells. */
export const KEPT = 'kept';

/** The key of what takes files dropped on the page. */
export const DROP = 'drop';

/** What keeping tells, what takes dropped files, and what puts the page down on the device, after all parts that a person may ask for. */
export const lateNotices = new LatePanels<Component<NoticeProps>>([
  { key: KEPT, load: () => import('./kept-notices.svelte') },
  { key: DROP, load: () => import('./file-drop.svelte') },
  { key: OFFLINE, load: () => import('./offline-notice.svelte') },
]);

/** All that the first sight of the page does not need, one after another. */
export async function loadLate(bench: Workbench): Promise<void> {
  await bench.advice.fetch();
  const found = await fetchCloseUps();
  if (found !== null) bench.stateOf(found.CloseUps);
  await lateNotices.load(DROP);
  await latePanels.loadAll();
  const measured = await fetchPlusMinus();
  if (measured !== null) bench.stateOf(measured.PlusMinus);
  await lateDialogs.loadAll();
  await lateViews.loadAll();
  await latePrint.loadAll();
  await lateNotices.loadAll();
  // The page is there for as long as the window is.
  (await fetchAboveKeyboard())?.keepAboveKeyboard();
}
