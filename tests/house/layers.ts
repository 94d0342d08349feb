const BASE = ['units', 'geometry', 'catalog', 'plan', 'scene'];
const RULES = [...BASE, 'rules', 'topics'];

/**
 * The layers of the house: for each folder of src, the folders that it may import. Data flows one way;
 * the linter's rows in .oxlintrc.json say the same, and layers.test.ts holds both to this table.
 */
export const LAYERS: Readonly<Record<string, readonly string[]>> = {
  units: [],
  geometry: ['units'],
  catalog: ['units', 'geometry'],
  plan: ['units', 'geometry', 'catalog'],
  scene: ['units', 'geometry', 'catalog', 'plan'],
  rules: BASE,
  topics: [...BASE, 'rules'],
  text: RULES,
  drawing: [...RULES, 'text'],
  sheets: [...RULES, 'text', 'drawing'],
  manual: [...RULES, 'text', 'drawing', 'sheets'],
  render: [...RULES, 'text', 'drawing', 'sheets'],
  editor: [...RULES, 'text', 'drawing', 'sheets'],
  app: [...RULES, 'text', 'drawing', 'sheets', 'manual', 'render', 'editor'],
  cli: [...RULES, 'text', 'drawing', 'sheets', 'manual', 'render'],
};

/** The folders of src/topics: each may ask those before it. The registry, which is made of their files, is asked by none of them. */
export const TOPICS: readonly string[] = [
  'room',
  'hood',
  'line',
  'power',
  'drain',
  'water',
  'heat',
  'capacity',
  'air',
  'duct',
  'people',
  'cleanliness',
  'registry',
];

/** Inside a topic: a formula knows no plan, a figure is worked out with formulas, a check holds figures. */
export const LEVELS: Readonly<Record<string, readonly string[]>> = {
  formulas: ['formulas'],
  figures: ['formulas', 'figures'],
  checks: ['formulas', 'figures', 'checks'],
};

/** The folder that takes the types of single rules past their topic's door: the words of each belong to it. */
export const WORDS_OF_RULES = 'text';

/** All that a formula may import from outside of the topics. */
export const UNDER_FORMULAS: readonly string[] = ['units', 'rules'];

/** Folders that touch the world outside: the screen, files, the clock. All others are pure. */
export const OUTER: readonly string[] = ['render', 'app', 'cli'];

/** The packages that a pure folder may use. */
export const PURE_PACKAGES: readonly string[] = ['zod', 'immer'];
