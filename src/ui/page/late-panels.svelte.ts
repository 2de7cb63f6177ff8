/** Panels that the first sight of the page does not need: loaded right after it, and kept, so that no network is missed later. */
import type { Component, Snippet } from 'svelte';
import type { BelowKey } from '../../session/mode.svelte.ts';
import type { Workbench } from '../../session/workbench.svelte.ts';

export interface PanelProps {
  readonly bench: Workbench;
  /** The choice of what lies below the side view, for the panel's header. */
  readonly tabs: Snippet;
}

export type LateKey = Exclude<BelowKey, 'why'> | 'bike';

/** How each part is fetched. */
export type Loaders<Panel> = Readonly<Record<LateKey, () => Promise<{ readonly default: Panel }>>>;

const LOADERS: Loaders<Component<PanelProps>> = {
  ride: () => import('../ride/ride-panel.svelte'),
  bike: () => import('../edit/bike-panel.svelte'),
  springs: () => import('../springs/springs-panel.svelte'),
  chain: () => import('../drive/chain-panel.svelte'),
  sprockets: () => import('../drive/sprockets-panel.svelte'),
  curves: () => import('../curves/curves-panel.svelte'),
};

export class LatePanels<Panel> {
  readonly #loaders: Loaders<Panel>;
  #panels = $state.raw<Partial<Record<LateKey, Panel>>>({});
  #failed = $state.raw<readonly LateKey[]>([]);

  constructor(loaders: Loaders<Panel>) {
    this.#loaders = loaders;
  }

  /** The panel, or null while it is on its way or could not be fetched. */
  panel(key: LateKey): Panel | null {
    return this.#panels[key] ?? null;
  }

  /** Whether the panel could not be fetched; `load` tries again. */
  hasFailed(key: LateKey): boolean {
    return this.#failed.includes(key);
  }

  async load(key: LateKey): Promise<void> {
    if (this.#panels[key] !== undefined) return;
    this.#failed = this.#failed.filter((each) => each !== key);
    try {
      const { default: panel } = await this.#loaders[key]();
      this.#panels = { ...this.#panels, [key]: panel };
    } catch {
      // The browser's words for it differ and tell a person nothing; the page says it in its own.
      this.#failed = [...this.#failed, key];
    }
  }

  /** All of them, one after another, so that none is missed once the network is gone. */
  async loadAll(): Promise<void> {
    for (const key of Object.keys(this.#loaders) as LateKey[]) await this.load(key);
  }
}

export const latePanels = new LatePanels(LOADERS);
