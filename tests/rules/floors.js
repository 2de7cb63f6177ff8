/** What each floor of src may import: the lists that the table of folders is made of, from the ground floor up. */

export const parts = ['core/plane', 'core/numeric', 'core/units'];
export const definition = ['core/parts', ...parts];
export const oneAdjuster = ['core/adjusters/definition', ...definition];
export const adjusters = ['core/adjusters/*', ...oneAdjuster];
export const chassis = ['core/adjusters', ...adjusters];
export const linkageOrDrive = ['core/chassis', ...chassis];
export const standing = ['core/linkage', 'core/drive', ...linkageOrDrive];
export const chainOrSprings = ['core/standing', ...standing];
export const equilibrium = ['core/chain', 'core/springs', ...chainOrSprings];
export const states = ['core/riding/equilibrium', ...equilibrium];
export const riding = ['core/riding/states', ...states];
export const weighing = ['core/riding', ...riding];
export const readings = ['core/weighing', ...weighing];
export const effects = ['core/readings', ...readings];
export const plan = ['core/effects', ...effects];
export const held = ['core/readings', 'core/sketch', ...readings];
export const measure = ['core/measure/held', ...held];
export const fitting = ['core/measure/kinds', 'core/measure/photo', ...measure];
export const spreads = ['core/measure', ...fitting];
const measuring = [
  'core/measure/spread',
  'core/measure',
  'core/measure/kinds',
  'core/measure/photo',
  'core/measure/held',
];
export const core = [...measuring, 'core/plan', 'core/sketch', ...plan];
export const words = ['words', ...core];
export const told = ['words/change', 'words/trouble', ...words];
export const allWords = [
  'words/why',
  'words/drive',
  'words/ride',
  'words/plan',
  'words/measure',
  'words/kept',
  ...told,
];
export const savedFields = ['core/adjusters', 'core/parts', 'core/units', 'core/numeric'];
export const documentParts = ['document/json', 'document/fields'];
export const documents = ['document', ...documentParts];
export const sceneParts = ['scene/shapes', 'scene/chain', 'scene/construction', 'scene/bike'];
export const scenes = ['scene', 'scene/plot', ...sceneParts];
export const belowSession = [
  'workers',
  'storage',
  'storage/link',
  'storage/file',
  'gestures',
  'curves',
  ...scenes,
  'sayings',
  'lessons',
  'document/demos',
  ...documents,
  ...allWords,
];
export const sessions = ['session/measure', 'session/tabs', 'session/keeping', 'session'];
export const belowControls = ['render/svg', ...sessions, ...belowSession];
export const belowPanel = ['ui/controls/fields', 'ui/controls/paper', 'ui/controls', ...belowControls];
