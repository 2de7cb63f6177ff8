/** The table of folders under src: what each is for, what it may import, and why; the linter and the rule tests follow it. */
import { coreFolders } from './core-folders.js';
import {
  core,
  allWords,
  savedFields,
  documentParts,
  documents,
  sceneParts,
  scenes,
  belowSession,
  belowControls,
  belowPanel,
} from './floors.js';
import { row } from './folder-row.js';

/** @type {import('./folder-row.js').Folder[]} */
export const folders = [
  ...coreFolders,
  row(
    'document/json',
    'text to JSON and back, with the place of what is wrong',
    'a reader of JSON knows text, not motorcycles',
    { values: ['core/numeric'], packages: ['valibot'] },
  ),
  row(
    'document/fields',
    'the fields of a saved bike and setup: what a file may hold, and how a damaged one is repaired',
    'a field is checked alone; how fields make a document is not its business',
    { values: ['document/json', ...savedFields], types: core, packages: ['valibot'] },
  ),
  row(
    'document',
    'what is saved: document and setup sheet, migrations, edits, history',
    'a document holds inputs only; were it to compute, results would end up saved. It knows what parts and adjusters are, units and Result',
    { values: [...documentParts, ...savedFields], types: core, packages: ['valibot'] },
  ),
  row(
    'document/demos',
    'the demonstration bikes',
    'a demonstration bike is a saved file that comes with the page',
    { values: [...documents, ...savedFields] },
  ),
  row(
    'document/schema',
    'the published JSON schemas of what is saved',
    'a schema describes the fields of a document or of a lesson; the page has no use for it',
    { values: [...documents, 'lessons', ...core] },
  ),
  row(
    'lessons',
    "one lesson a file, as data; a trainer's own, made, saved and opened",
    'a lesson is data that runs on any bike; what it says of this one is computed and worded below it',
    { values: [...documents, ...allWords], packages: ['valibot'] },
  ),
  row(
    'sayings',
    'one saying of the trade a file, as data with its trials',
    'a saying is data held against a bike; its verdict comes from the core',
    { values: [...documents, ...allWords] },
  ),
  row(
    'scene/shapes',
    'lines, areas and labels as data, the view on them, and the looks of a theme',
    'a shape knows its role, not the part that it draws',
    { values: [...allWords] },
  ),
  row(
    'scene/plot',
    'shapes to the strokes and words that a renderer paints',
    'a plotter knows shapes, not motorcycle parts',
    { values: ['scene/shapes', 'core/plane'] },
  ),
  row(
    'scene/chain',
    'chain and belt, their slack and where they rub',
    'the chain is drawn from the standing bike; the lines of a construction are laid over it',
    { values: ['scene/shapes', ...allWords] },
  ),
  row(
    'scene/construction',
    'the lines and labels that show where a reading comes from',
    'a construction is drawn from the standing bike and its readings, not from the bike as drawn',
    { values: ['scene/shapes', 'scene/chain', ...allWords] },
  ),
  row(
    'scene/bike',
    'the parts of the bike, one drawing a file',
    'a part is drawn from the standing bike; what lies round it is not its business',
    { values: ['scene/shapes', 'scene/chain', 'scene/construction', ...allWords] },
  ),
  row(
    'scene',
    'pose and readings to plain drawing data: ground, shadow, outlines, close-ups',
    'the drawing is data made from the core; a scene that knew the document or a renderer could not be printed and tested alone',
    { values: [...sceneParts, ...allWords] },
  ),
  row(
    'curves',
    'a reading along an axis as chart data, words and rows',
    'a chart is data made from sweeps, like the scene; one that knew the document or a renderer could not be saved and tested alone',
    { values: [...scenes, ...allWords], packages: ['d3-scale'] },
  ),
  row(
    'render/canvas',
    'a drawing as a list of steps, and the thread beside the page that paints it',
    'a renderer knows lines and labels, not motorcycle parts; what another thread paints must need no page',
    { types: scenes, browser: true },
  ),
  row(
    'render/konva',
    'the side view on the screen, and pictures of it to save',
    'a renderer knows lines and labels, not motorcycle parts, so a new part touches no renderer',
    { values: ['render/canvas'], types: scenes, packages: ['konva'], browser: true },
  ),
  row(
    'render/svg',
    'draws scene data as SVG text, for print and file',
    'a renderer knows lines and labels, not motorcycle parts, so a new part touches no renderer; uqr says which squares of a QR code are dark',
    { types: scenes, packages: ['uqr'], browser: true },
  ),
  row(
    'gestures',
    'pointer and keyboard gestures as small states',
    'a gesture turns movements into edits and must run in a test without a page',
    { values: [...documents, ...scenes, 'core/plane', 'core/numeric'] },
  ),
  row(
    'workers',
    'threads beside the page: typed messages round core functions',
    'a worker is a mailbox: it reads a message and calls a core function that a unit test also calls',
    { values: core, browser: true },
  ),
  row(
    'storage/link',
    'a bike or a lesson in a link: packed behind the # of an address',
    'a link carries what is saved and knows no store',
    { values: [...documents, 'core/numeric'], packages: ['valibot'], browser: true },
  ),
  row(
    'storage/file',
    'files that a person gives or gets',
    'a file is read or written whole and knows no store',
    { values: [...documents, 'core/numeric'], packages: ['valibot'], browser: true },
  ),
  row(
    'storage',
    'IndexedDB, files, preferences, other tabs',
    'storage carries documents in and out and understands nothing else; core/numeric only because a failure is a Result',
    {
      values: ['storage/link', 'storage/file', ...documents, 'core/numeric'],
      packages: ['idb', 'valibot'],
      browser: true,
    },
  ),
  row(
    'session',
    'Svelte state classes: immutable document in, derived pose and readings out',
    'state must be testable without a canvas, so it knows no renderer and no component',
    { values: belowSession, packages: ['svelte'], browser: true },
  ),
  row(
    'session/keeping',
    'the bikes and setup sheets that are kept: list, search, save, other tabs',
    'what is kept is fetched after the first sight, so the page works without it',
    { values: ['session', ...belowSession], packages: ['svelte'], browser: true },
  ),
  row(
    'session/tabs',
    'what a tab keeps while it is out of sight, one class a tab',
    'the state of a tab is fetched with the tab, so no state that comes first knows it',
    { values: ['session/keeping', 'session', ...belowSession], packages: ['svelte'], browser: true },
  ),
  row(
    'session/measure',
    'the sheet of measurements as it is typed, its photograph and its fit',
    'the state of a tab is fetched with the tab, so no state that comes first knows it',
    { values: ['session/keeping', 'session', ...belowSession], packages: ['svelte'], browser: true },
  ),
  row(
    'ui/controls',
    'small parts that every panel uses: buttons, fields, notices, icons',
    'a control knows no panel, so that every panel can use it',
    { values: belowControls, packages: ['svelte'], browser: true },
  ),
  row(
    'ui/controls/fields',
    'what is typed, chosen, stepped and slid: numbers, texts, lists, menus',
    'a field knows the value that it takes, not the panel that it is in',
    { values: ['ui/controls', ...belowControls], packages: ['svelte'], browser: true },
  ),
  row('ui/controls/paper', 'what is printed or saved as a picture', 'paper shows what a panel hands it', {
    values: ['ui/controls', ...belowControls],
    packages: ['svelte'],
    browser: true,
  }),
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
    'a command works on files with the core and needs no page; uqr prints the code that a phone reads',
    {
      values: [...documents, 'document/demos', 'document/schema', ...allWords],
      packages: ['vite', '@playwright/test', 'uqr'],
      node: true,
    },
  ),
];

/** Packages a test beside its source may use on top of its folder's own. */
export const testPackages = ['vitest', 'fast-check', '@salusoft89/planegcs', 'fake-indexeddb', 'idb', 'jsqr'];
