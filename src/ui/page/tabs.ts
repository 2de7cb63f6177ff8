/** The tabs below the side view, in their order: each is a folder under src/ui, one row here, and fetched late. */
import type { Component } from 'svelte';
import type { DriveText } from '../../core/parts/drive-noun.ts';
import type { PanelProps } from './panel-props.ts';

export interface Tab {
  /** Its folder. */
  readonly key: string;
  readonly label: DriveText;
  readonly load: () => Promise<{ readonly default: Component<PanelProps> }>;
}

export const TABS: readonly Tab[] = [
  { key: 'why', label: 'Why', load: () => import('../why/why-panel.svelte') },
  { key: 'ride', label: 'Ride', load: () => import('../ride/ride-panel.svelte') },
  { key: 'springs', label: 'Springs', load: () => import('../springs/springs-panel.svelte') },
  {
    key: 'chain',
    label: ({ Loop }) => Loop,
    load: () => import('./load-panels.ts').then(({ loadChain }) => loadChain()),
  },
  {
    key: 'sprockets',
    label: 'Sprockets',
    load: () => import('../sprockets/sprockets-panel.svelte'),
  },
  {
    key: 'sheets',
    label: 'Sheets',
    load: () => import('./load-panels.ts').then(({ loadSheets }) => loadSheets()),
  },
  {
    key: 'plan',
    label: 'Find a setup',
    load: () => import('./load-panels.ts').then(({ loadPlan }) => loadPlan()),
  },
  {
    key: 'curves',
    label: 'Curves',
    load: () => import('./load-panels.ts').then(({ loadCurves }) => loadCurves()),
  },
  {
    key: 'measure',
    label: 'Tape, photo',
    load: () => import('./load-panels.ts').then(({ loadMeasure }) => loadMeasure()),
  },
  {
    key: 'lessons',
    label: 'Lessons',
    load: () => import('../lessons/lessons-panel.svelte'),
  },
];

/** The tab in sight at first. */
export const [FIRST_TAB] = TABS;
