/** Fetches panels with the parts that they open later, so that none is missed once the network is gone. */
import type { Component } from 'svelte';
import type { PanelProps } from './panel-props.ts';

type Loaded = Promise<{ readonly default: Component<PanelProps> }>;

export async function loadSheets(): Loaded {
  const [panel] = await Promise.all([
    import('../sheets/sheets-panel.svelte'),
    import('../sheets/season.svelte'),
    import('../sheets/compare.svelte'),
    import('../sheets/compare-why.svelte'),
    import('../sheets/compare-curves.svelte'),
  ]);
  return panel;
}

export async function loadChain(): Loaded {
  const [panel] = await Promise.all([
    import('../chain/chain-panel.svelte'),
    import('../chain/chain-slack.svelte'),
    import('../chain/chain-pivot.svelte'),
  ]);
  return panel;
}

export async function loadPlan(): Loaded {
  const [panel] = await Promise.all([import('../plan/plan-panel.svelte'), import('../plan/remedies.svelte')]);
  return panel;
}

export async function loadCurves(): Loaded {
  const [panel] = await Promise.all([
    import('../curves/curves-panel.svelte'),
    import('../curves/save-curves.ts'),
  ]);
  return panel;
}

export async function loadMeasure(): Loaded {
  const [panel] = await Promise.all([
    import('../measure/measure-panel.svelte'),
    import('../measure/papers-form.svelte'),
    import('../measure/photo-work.svelte'),
    import('../measure/photo-stage.svelte'),
    import('../../session/measure/tape-fit.ts'),
  ]);
  return panel;
}
