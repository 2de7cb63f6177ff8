/** The table of folders under src: what each is for, what it may import, and why; the linter and the rule tests follow it. */

/**
 * A folder's name may end with a star: the row is then for every folder there without a row. `values` may be imported
 * freely, `types` only with `import type`; `packages` are the packages it may use (its tests may use more, see
 * testPackages). `browser` says whether the browser's globals may appear; `node` whether node's modules may. `why`
 * ends the message of a refused import. @typedef {{ folder: string, purpose: string, values: string[], types:
 * string[], packages: string[], browser: boolean, node: boolean, why: string }} Folder
 */

const parts = ['core/plane', 'core/numeric', 'core/units'];
const adjusters = ['core/parts', ...parts];
const chassis = ['core/adjusters', ...adjusters];
const linkageOrDrive = ['core/chassis', ...chassis];
const standing = ['core/linkage', 'core/drive', ...linkageOrDrive];
const chainOrSprings = ['core/standing', ...standing];
const riding = ['core/chain', 'core/springs', ...chainOrSprings];
const weighing = ['core/riding', ...riding];
const readings = ['core/weighing', ...weighing];
const effects = ['core/readings', ...readings];
const plan = ['core/effects', ...effects];
const measure = ['core/readings', 'core/sketch', ...readings];
const core = ['core/measure', 'core/plan', 'core/sketch', ...plan];
const belowSession = [
  'workers',
  'storage',
  'gestures',
  'curves',
  'scene',
  'sayings',
  'lessons',
  'document',
  'words',
  ...core,
];
const belowPanel = ['ui/controls', 'render/svg', 'session', ...belowSession];

/**
 * @param {string} folder
 * @param {string} purpose
 * @param {string} why
 * @param {Partial<Omit<Folder, 'folder' | 'purpose' | 'why'>>} allowed
 * @returns {Folder}
 */
const row = (folder, purpose, why, allowed = {}) => ({
  folder,
  purpose,
  why,
  values: [],
  types: [],
  packages: [],
  browser: false,
  node: false,
  ...allowed,
});

/** @type {Folder[]} */
export const folders = [
  row(
    'core/units',
    'exact conversions, the table of quantities',
    'units are the ground floor and know no geometry; core/numeric only because an unreadable number is a Result',
    { values: ['core/numeric'] },
  ),
  row(
    'core/numeric',
    'roots, curves through points, fair splits, results that carry a reason',
    'numeric methods know numbers, not motorcycles',
  ),
  row(
    'core/plane',
    'points, lines, circles, tangents',
    'plane geometry knows shapes, not motorcycles; core/numeric only because a missing answer is a Result',
    { values: ['core/units', 'core/numeric'] },
  ),
  row(
    'core/parts',
    'what a bike is made of: types, and what follows from a part alone',
    'a part is described before anyone turns or stands it',
    { values: parts },
  ),
  row(
    'core/adjusters',
    'one adjuster a file; the setup that follows from their list, and how two setups differ',
    'an adjuster knows the parts it is on; how far it reaches is found on the standing bike',
    { values: adjusters },
  ),
  row(
    'core/chassis',
    'bike and setup to a pose on the ground',
    'the pose comes before linkage, drive, springs and readings, which all stand on it',
    { values: chassis },
  ),
  row(
    'core/linkage',
    'rear-suspension loops',
    'a linkage is solved on the pose alone; the drive is its sibling, not its input',
    { values: linkageOrDrive },
  ),
  row(
    'core/drive',
    'sprockets, chain runs, the squat construction, chain length',
    'the drive is solved on the pose alone; the linkage is its sibling, not its input',
    { values: linkageOrDrive },
  ),
  row(
    'core/standing',
    'the whole bike in numbers, on its wheels at given travel',
    'a stance comes from pose, linkage and drive; chain, springs and riding build on it, never the reverse',
    { values: standing },
  ),
  row(
    'core/chain',
    'the chain on this bike: fit, slack, guide, obstacles',
    'the chain is read on the standing bike; springs do not move it, only travel does',
    { values: chainOrSprings },
  ),
  row(
    'core/springs',
    'force laws, rates at the wheel',
    'a spring knows its stroke, not who sits on the bike',
    { values: chainOrSprings },
  ),
  row(
    'core/riding',
    'ride states, loads, equilibrium, limits',
    'riding loads the springs of the standing bike; readings are taken from it, never the reverse',
    { values: riding },
  ),
  row(
    'core/weighing',
    'weigh-in: from scales to mass and centre of gravity',
    'a weigh-in is read on a bike that rests on its springs',
    { values: weighing },
  ),
  row(
    'core/readings',
    'one reading a file',
    'a reading may look at all of the model, and the model at no reading',
    { values: readings },
  ),
  row(
    'core/effects',
    'what changes do: causes split, sweeps, sprocket pairs, ride states side by side',
    'effects are many readings held side by side and know nothing of how a bike is saved or drawn',
    { values: effects },
  ),
  row(
    'core/plan',
    'what moves what; targets to setups in workshop steps',
    'a plan is many bikes stood and read; it knows nothing of how a bike is saved or drawn',
    { values: plan },
  ),
  row(
    'core/sketch',
    'one point of the bike a file; grips, and how a hand moves them',
    'a point is moved on the standing bike; what the readings make of it is not its business',
    { values: chainOrSprings },
  ),
  row(
    'core/measure',
    'tape, gauge and scales to a bike with the ± of every reading',
    'a measured bike is judged by its readings; what a change does and how a bike is saved is not its business',
    { values: measure },
  ),
  row(
    'words',
    'every sentence with a figure in it, from data and the figures shown',
    'sentences come last: they are made from what the core found, and nothing is computed from a sentence',
    { values: core },
  ),
  row(
    'document',
    'what is saved: schema, migrations, edits, history',
    'a document holds inputs only; were it to compute, results would end up saved. It knows what parts and adjusters are, units and Result',
    {
      values: ['core/parts', 'core/adjusters', 'core/units', 'core/numeric'],
      types: core,
      packages: ['valibot'],
    },
  ),
  row(
    'lessons',
    'one lesson a file, as data',
    'a lesson is data that runs on any bike; what it says of this one is computed and worded below it',
    { values: ['document', 'words', ...core] },
  ),
  row(
    'sayings',
    'one saying of the trade a file, as data with its trials',
    'a saying is data held against a bike; its verdict comes from the core',
    { values: ['document', 'words', ...core] },
  ),
  row(
    'scene',
    'pose and readings to plain drawing data',
    'the drawing is data made from the core; a scene that knew the document or a renderer could not be printed and tested alone',
    { values: ['words', ...core] },
  ),
  row(
    'curves',
    'a reading along an axis as chart data, words and rows',
    'a chart is data made from sweeps, like the scene; one that knew the document or a renderer could not be saved and tested alone',
    { values: ['scene', 'words', ...core], packages: ['d3-scale'] },
  ),
  row(
    'render/canvas',
    'a drawing as a list of steps, and the thread beside the page that paints it',
    'a renderer knows lines and labels, not motorcycle parts; what another thread paints must need no page',
    { types: ['scene'], browser: true },
  ),
  row(
    'render/konva',
    'the side view on the screen, and pictures of it to save',
    'a renderer knows lines and labels, not motorcycle parts, so a new part touches no renderer',
    { values: ['render/canvas'], types: ['scene'], packages: ['konva'], browser: true },
  ),
  row(
    'render/svg',
    'draws scene data as SVG text, for print and file',
    'a renderer knows lines and labels, not motorcycle parts, so a new part touches no renderer',
    { types: ['scene'], browser: true },
  ),
  row(
    'gestures',
    'pointer and keyboard gestures as small states',
    'a gesture turns movements into edits and must run in a test without a page',
    { values: ['document', 'scene', 'core/plane', 'core/numeric'] },
  ),
  row(
    'workers',
    'threads beside the page: typed messages round core functions',
    'a worker is a mailbox: it reads a message and calls a core function that a unit test also calls',
    { values: core, browser: true },
  ),
  row(
    'storage',
    'IndexedDB, files, preferences, other tabs',
    'storage carries documents in and out and understands nothing else; core/numeric only because a failure is a Result',
    { values: ['document', 'core/numeric'], packages: ['idb', 'valibot'], browser: true },
  ),
  row(
    'session',
    'Svelte state classes: immutable document in, derived pose and readings out',
    'state must be testable without a canvas, so it knows no renderer and no component',
    { values: belowSession, packages: ['svelte'], browser: true },
  ),
  row(
    'ui/controls',
    'small parts that every panel uses: buttons, fields, notices, icons',
    'a control knows no panel, so that every panel can use it',
    { values: ['render/svg', 'session', ...belowSession], packages: ['svelte'], browser: true },
  ),
  row(
    'ui/view',
    'the side view: canvas, handles, hands and tools',
    'one of its components has to put the canvas on the page, so it may mount a renderer; panels stand side by side and know no other',
    { values: ['render/konva', ...belowPanel], packages: ['svelte'], browser: true },
  ),
  row(
    'ui/*',
    'one panel of the page a folder: the adjusters, the readings, editing, and each tab below the side view',
    'panels stand side by side: one that used another could not be moved or fetched late alone',
    { values: belowPanel, packages: ['svelte'], browser: true },
  ),
  row(
    'ui/page',
    'the page: what lies where, the bar along the top, the tabs, keys and notices',
    'the page puts panels together; no panel knows the page',
    { values: ['ui/view', 'ui/*', ...belowPanel], packages: ['svelte'], browser: true },
  ),
  row(
    'app',
    'entry, wiring, index.html',
    'the app wires the page together; the node commands are not part of it',
    { values: ['ui/page', ...belowPanel], packages: ['svelte'], browser: true },
  ),
  row(
    'commands',
    'node-side commands: start, test, readings, plan, measure, bench',
    'a command works on files with the core and needs no page',
    { values: ['document', 'words', ...core], packages: ['vite', '@playwright/test'], node: true },
  ),
];

/** Packages a test beside its source may use on top of its folder's own. */
export const testPackages = ['vitest', 'fast-check', '@salusoft89/planegcs', 'fake-indexeddb', 'idb'];

/**
 * The row for a folder under src, such as `core/plane`: its own, or else the row for all folders beside it, which
 * ends with a star. @param {string} name @returns {Folder | undefined}
 */
export function rowOf(name) {
  const star = `${name.slice(0, name.lastIndexOf('/') + 1)}*`;
  return folders.find((each) => each.folder === name) ?? folders.find((each) => each.folder === star);
}

/**
 * The row of the folder a file sits in, by its path from the project's root, e.g. `src/core/plane/point.ts`.
 * @param {string} file
 * @returns {Folder | undefined}
 */
export function folderOf(file) {
  return /^src\//.test(file) ? rowOf(nameOf(file)) : undefined;
}

/**
 * The folder under src that a file sits in.
 * @param {string} file
 */
export function nameOf(file) {
  return file.slice('src/'.length, file.lastIndexOf('/'));
}
