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
  engineering: ['units'],
  figures: ['units', 'geometry', 'catalog', 'plan', 'scene', 'engineering'],
  checks: ['units', 'geometry', 'catalog', 'plan', 'scene', 'engineering'],
  services: ['units', 'geometry', 'catalog', 'plan', 'scene', 'engineering', 'figures', 'checks'],
  rush: ['units', 'geometry', 'catalog', 'plan', 'scene', 'engineering'],
  proposals: ['units', 'geometry', 'catalog', 'plan', 'scene', 'engineering', 'checks'],
  sheets: ['units', 'geometry', 'catalog', 'plan', 'scene', 'engineering', 'figures', 'checks'],
  manual: ['units', 'geometry', 'catalog', 'plan', 'scene', 'engineering', 'figures', 'checks', 'services', 'sheets'],
  render: ['units', 'geometry', 'catalog', 'plan', 'scene', 'engineering', 'figures', 'checks', 'sheets'],
  editor: ['units', 'geometry', 'catalog', 'plan', 'scene', 'engineering', 'figures', 'checks', 'sheets'],
  app: [
    'units',
    'geometry',
    'catalog',
    'plan',
    'scene',
    'engineering',
    'figures',
    'checks',
    'services',
    'rush',
    'proposals',
    'sheets',
    'manual',
    'render',
    'editor',
  ],
  cli: [
    'units',
    'geometry',
    'catalog',
    'plan',
    'scene',
    'engineering',
    'figures',
    'checks',
    'services',
    'rush',
    'proposals',
    'sheets',
    'manual',
    'render',
  ],
};

/** Folders that touch the world outside: the screen, files, the clock. All others are pure. */
export const OUTER: readonly string[] = ['render', 'app', 'cli'];

/** The packages that a pure folder may use. */
export const PURE_PACKAGES: readonly string[] = ['zod', 'immer'];
