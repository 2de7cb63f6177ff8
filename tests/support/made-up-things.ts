/** Made-up things, one of each kind that a contributor adds: for each the one file that defines it, and its row in a list. */

export interface MadeUpThing {
  /** As it begins a sentence. */
  readonly name: string;
  /** The one file, from the project's root, and its text. */
  readonly file: string;
  readonly text: string;
  /** The list that takes its row, and the words of that list before which the row is written. */
  readonly list: string;
  readonly before: string;
  readonly row: string;
  /** The line by which the list imports the file; null where the row itself does. */
  readonly imports: string | null;
}

export const MADE_UP = {
  quantity: { key: 'torque', symbol: 'N·m', typed: 'Nm' },
  adjuster: { key: 'clampTorque', label: 'Clamp bolt torque', value: 23 },
  point: { key: 'barEnd', label: 'Handlebar end' },
  measuredPoint: { key: 'headMiddle', label: 'Middle of the head tube' },
  reading: { key: 'halfWheelbase', label: 'Half of the wheelbase' },
  state: { key: 'onTheJack', label: 'On the jack' },
  tab: { key: 'torque', label: 'Torque', words: 'What the bolts of the clamps hold.' },
} as const;

export const MADE_UP_THINGS: readonly MadeUpThing[] = [
  {
    name: 'The quantity',
    file: 'src/core/units/torque.ts',
    text: `/** Tightening torques: N·m in either system. */
import { asInCore, inBothSystems, type Quantity } from './quantity.ts';

export const torque: Quantity = {
  fileUnit: '${MADE_UP.quantity.symbol}',
  ...inBothSystems('${MADE_UP.quantity.symbol}', 1),
  fromCore: asInCore,
  typed: { nm: 1, 'n·m': 1 },
  advice: 'Use N·m here.',
  indistinct: 0.05,
  noticed: 2,
  leastTold: 1,
  counted: null,
};
`,
    list: 'src/core/units/all-quantities.ts',
    before: '  speed,',
    row: '  torque,\n',
    imports: "import { torque } from './torque.ts';",
  },
  {
    name: 'The adjuster',
    file: 'src/core/adjusters/part/clamp-torque.ts',
    text: `/** Torque of the clamps’ bolts. */
import type { NumberDefinition } from '../definition/adjuster.ts';

export const clampTorque = {
  key: '${MADE_UP.adjuster.key}',
  kind: 'part',
  group: 'rideHeight',
  label: '${MADE_UP.adjuster.label}',
  holds: 'number',
  quantity: 'torque',
  saved: { least: 0, most: 100 },
  default: ${MADE_UP.adjuster.value},
  range: { least: 10, most: 30, step: 1 },
  more: 'tighter',
  less: 'looser',
  help: 'Torque of the bolts that hold the fork tubes.',
} as const satisfies NumberDefinition;
`,
    list: 'src/core/adjusters/all-adjusters.ts',
    before: '  frontTeeth,',
    row: '  clampTorque,\n',
    imports: "import { clampTorque } from './part/clamp-torque.ts';",
  },
  {
    name: 'The point',
    file: 'src/core/parts/bar-end.ts',
    text: `/** The end of the handlebar. */
import type { FramePlace } from './frame-place.ts';

export const barEnd: FramePlace = {
  label: '${MADE_UP.point.label}',
  help: 'Where the outer hand holds the handlebar.',
  needsRun: false,
  absent: { at: { x: 380, y: 640 }, said: false },
};
`,
    list: 'src/core/parts/frame-places.ts',
    before: '  tank,',
    row: '  barEnd,\n',
    imports: "import { barEnd } from './bar-end.ts';",
  },
  {
    name: 'The measured point',
    file: 'src/core/sketch/head-middle.ts',
    text: `/** Half way down the head tube. */
import { inFrame, onGround } from '../chassis/pose.ts';
import { always, type BikePoint } from './bike-point.ts';
import { axisFootInFrame, measureSteering } from './measure-steering.ts';

export const headMiddle: BikePoint = {
  label: '${MADE_UP.measuredPoint.label}',
  help: 'Half way down the head tube.',
  applies: always,
  place: (stance, bike) => onGround(stance.pose, axisFootInFrame(stance, bike.frame.headTubeLength / 2)),
  move: (move) => measureSteering(move, { head: inFrame(move.stance.pose, move.target) }),
  placedBy: null,
  staysStill: 'countershaft',
};
`,
    list: 'src/core/sketch/points.ts',
    before: '  frontAxle,\n  frontPatch,\n  shockOnFrame,',
    row: '  headMiddle,\n',
    imports: "import { headMiddle } from './head-middle.ts';",
  },
  {
    name: 'The reading',
    file: 'src/core/readings/half-wheelbase.ts',
    text: `/** Half of the wheelbase. */
import type { Reading } from './reading.ts';

export const halfWheelbase: Reading = {
  key: '${MADE_UP.reading.key}',
  label: '${MADE_UP.reading.label}',
  group: 'steering',
  quantity: 'length',
  construction: 'wheelbase',
  read: ({ pose }) => pose.wheelbase / 2,
  more: 'longer',
  less: 'shorter',
  help: {
    what: 'From either contact patch to the middle between both.',
    sign: 'Always positive.',
    measured: 'Half of what the tape says between the axles.',
    feels: 'As the wheelbase does.',
  },
};
`,
    list: 'src/core/readings/all-readings.ts',
    before: '  frontAxleHeight,',
    row: '  halfWheelbase,\n',
    imports: "import { halfWheelbase } from './half-wheelbase.ts';",
  },
  {
    name: 'The ride state',
    file: 'src/core/riding/states/on-the-jack-state.ts',
    text: `/** The bike on a jack that leaves 20 mm of travel used at either end. */
import type { RideState } from './ride-state.ts';

export const onTheJack = {
  key: '${MADE_UP.state.key}',
  label: '${MADE_UP.state.label}',
  group: 'given',
  springsCarry: false,
  loadCase: () => ({ kind: 'travel', travel: { front: 20, rear: 20 }, setBy: {} }),
} as const satisfies RideState;
`,
    list: 'src/core/riding/states/all-ride-states.ts',
    before: '  travelByHand,\n] as const;',
    row: '  onTheJack,\n',
    imports: "import { onTheJack } from './on-the-jack-state.ts';",
  },
  {
    name: 'The tab',
    file: 'src/ui/torque/torque-panel.svelte',
    text: `<!-- Torque: what the bolts of the clamps hold. -->
<script lang="ts">
  import type { Workbench } from '../../session/workbench.svelte.ts';

  interface Props {
    bench: Workbench;
  }

  const { bench }: Props = $props();
</script>

<section aria-label="${MADE_UP.tab.label}">
  <p>${MADE_UP.tab.words} {bench.session.document.bike.name}</p>
</section>
`,
    list: 'src/ui/page/tabs.ts',
    before: "  { key: 'ride', label: 'Ride', load: () => import('../ride/ride-panel.svelte') },",
    row: "  { key: 'torque', label: 'Torque', load: () => import('../torque/torque-panel.svelte') },\n",
    imports: null,
  },
];
