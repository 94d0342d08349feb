import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LAYERS, LEVELS, OUTER, PURE_PACKAGES, TOPICS, UNDER_FORMULAS, WORDS_OF_RULES } from './layers.ts';
import { type Import, readSources, type Source } from './sources.ts';

const folders = Object.keys(LAYERS);
const topics = TOPICS.filter((topic) => topic !== 'registry');
const sources = readSources();

describe('src, read without the linter', () => {
  it('holds no folder without a layer', () => {
    const found = readdirSync('src', { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(found.map((entry) => entry.name).filter((name) => !(name in LAYERS))).toEqual([]);
  });

  it('is seen at all', () => {
    expect(sources.length).toBeGreaterThan(0);
    expect(sources.flatMap((source) => source.imports).length).toBeGreaterThan(0);
  });

  it('imports along the arrows only, and each folder through its index', () => {
    expect(sources.flatMap((source) => source.imports.flatMap((one) => faultOf(source, one)))).toEqual([]);
  });

  it('keeps the core and the editor from the world outside', () => {
    expect(sources.filter(isPure).flatMap(impuritiesOf)).toEqual([]);
  });
});

describe('the linter', () => {
  const rows = readLintRows();
  const forbids = (row: string, specifier: string) => (rows.get(row) ?? []).some((pattern) => pattern.test(specifier));

  it('has a row for each folder, topic and level', () => {
    const levels = topics.flatMap((topic) => Object.keys(LEVELS).map((level) => `topics/${topic}/${level}`));
    const last = Object.keys(LEVELS).at(-1) ?? '';
    const wanted = [
      ...folders.filter((folder) => folder !== 'topics'),
      ...TOPICS.map((topic) => `topics/${topic}`),
      ...levels.filter((level) => !level.endsWith(last)),
    ];
    expect([...rows.keys()].toSorted()).toEqual(wanted.toSorted());
  });

  it('forbids between folders exactly what the table forbids', () => {
    const wrong = [...rows.keys()].flatMap((row) => {
      const [from = '', , level] = row.split('/');
      return folders
        .filter((to) => to !== from)
        .flatMap((to) => {
          const door = to === 'topics' ? 'topics/heat' : to;
          const isAllowed = LAYERS[from]?.includes(to) && (level !== 'formulas' || UNDER_FORMULAS.includes(to));
          const says = [`../${door}`, `../../${door}`].map((specifier) => forbids(row, specifier));
          return says.every((one) => one === !isAllowed) && forbids(row, `../${door}/inner`) ? [] : [`${row} → ${to}`];
        });
    });
    expect(wrong).toEqual([]);
  });

  it('forbids between topics exactly what their order forbids', () => {
    const wrong = [...rows.keys()].flatMap((row) => {
      const [, from] = row.split('/');
      if (from === undefined) return [];
      return TOPICS.filter((to) => to !== from).flatMap((to) => {
        const isAllowed = TOPICS.indexOf(to) < TOPICS.indexOf(from);
        const says = [`../../${to}`, `../../../${to}`].map((specifier) => forbids(row, specifier));
        return says.every((one) => one === !isAllowed) && forbids(row, `../../${to}/formulas/inner`) ? [] : [`${row} → ${to}`];
      });
    });
    expect(wrong).toEqual([]);
  });

  it('forbids inside a topic exactly what its levels forbid', () => {
    const wrong = [...rows.keys()].flatMap((row) => {
      const from = row.split('/')[2];
      if (from === undefined) return [];
      return Object.keys(LEVELS)
        .filter((to) => to !== from)
        .flatMap((to) => {
          const says = [`../${to}/inner`, `../../${to}/support/inner`].map((specifier) => forbids(row, specifier));
          return says.every((one) => one === !LEVELS[from]?.includes(to)) ? [] : [`${row} → ${to}`];
        });
    });
    expect(wrong).toEqual([]);
  });

  it('fires on each kind of fault, and on nothing that is allowed', () => {
    const good = {
      'src/scene/good.ts': "import { a } from '../plan';\nexport const b = a;\n",
      'src/sheets/good.ts': "import { a } from '../topics/heat';\nexport const b = a;\n",
      'src/text/en/good.ts': "import type { A } from '../../topics/heat/checks/heat-units';\nexport type B = A;\n",
      'src/topics/heat/formulas/good.ts':
        "import { a } from '../../../rules';\nimport { b } from '../../water';\nexport const c = a + b;\n",
      'src/topics/heat/figures/good.ts':
        "import { a } from '../../../scene';\nimport { b } from '../formulas/rinseHold';\nexport const c = a + b;\n",
      'src/topics/heat/checks/good.ts':
        "import { a } from '../../water';\nimport { b } from '../figures/rinse-hold';\nexport const c = a + b;\n",
    };
    expect(lint(good)).toEqual([]);
    const faults = {
      'src/geometry/up.ts': "import { a } from '../plan';\nexport const b = a;\n",
      'src/rules/up.ts': "import type { A } from '../drawing';\nexport type B = A;\n",
      'src/topics/heat/checks/up.ts': "import type { A } from '../../../sheets';\nexport type B = A;\n",
      'src/topics/heat/checks/later.ts': "import { a } from '../../duct';\nexport const b = a;\n",
      'src/topics/heat/checks/past.ts': "import { a } from '../../water/formulas/rackWater';\nexport const b = a;\n",
      'src/topics/heat/figures/support/check.ts': "import { a } from '../../checks/heat-units';\nexport const b = a;\n",
      'src/topics/heat/formulas/figure.ts': "import { a } from '../figures/heat-units';\nexport const b = a;\n",
      'src/topics/heat/formulas/placed.ts': "import type { A } from '../../../scene';\nexport type B = A;\n",
      'src/sheets/past.ts': "import { a } from '../topics/heat/formulas/rinseHold';\nexport const b = a;\n",
      'src/scene/deep.ts': "import { a } from '../plan/edits';\nexport const b = a;\n",
      'src/editor/screen.ts': "import { a } from 'react-konva';\nexport const b = a;\n",
      'src/plan/file.ts': "import { a } from 'node:fs';\nexport const b = a;\n",
      'src/units/clock.ts': 'export const now = () => Date.now();\n',
      'src/units/luck.ts': 'export const luck = () => Math.random();\n',
      'src/units/say.ts': "export const say = () => console.log('a');\n",
      'src/plan/screen.ts': 'export const width = () => window.innerWidth;\n',
      'src/units/one.ts': "import { b } from './two';\nexport const a = () => b;\n",
      'src/units/two.ts': "import { a } from './one';\nexport const b = () => a;\n",
    };
    expect(lint(faults)).toEqual(Object.keys(faults).sort());
  });
});

/** Why an import is not allowed, if it isn't. */
function faultOf(source: Source, one: Import): string[] {
  const fault = (reason: string) => [`${source.path}: '${one.specifier}' ${reason}`];
  if (one.kind === 'package') {
    return isPure(source) && !PURE_PACKAGES.includes(one.name) ? fault('is no package of the core') : [];
  }
  const [from, to] = [placeOf(source.path), placeOf(one.target)];
  if (from.folder === '' || isSameRoom(from, to)) return isLevelHeld(from, to) ? [] : fault('goes against the levels of its topic');
  if (!isArrowHeld(from, to)) return fault('goes against the arrows');
  const isWords = from.folder === WORDS_OF_RULES && (to.level === 'checks' || to.level === 'figures');
  return one.target === to.door || isWords ? [] : fault('goes past the index');
}

interface HousePlace {
  folder: string;
  /** In src/topics the topic, and in it the level. */
  topic: string | null;
  level: string | null;
  /** Where others come in. */
  door: string;
}

function placeOf(path: string): HousePlace {
  const [folder = '', topic = '', level = ''] = path.split('/');
  if (folder !== 'topics') return { folder: path.includes('/') || folder in LAYERS ? folder : '', topic: null, level: null, door: folder };
  return { folder, topic, level: level in LEVELS ? level : null, door: `topics/${topic}` };
}

const isSameRoom = (from: HousePlace, to: HousePlace) => from.folder === to.folder && from.topic === to.topic;

const isLevelHeld = (from: HousePlace, to: HousePlace) =>
  from.level === null || to.level === null || (LEVELS[from.level]?.includes(to.level) ?? false);

function isArrowHeld(from: HousePlace, to: HousePlace): boolean {
  if (from.topic !== null && to.topic !== null) return TOPICS.indexOf(to.topic) < TOPICS.indexOf(from.topic);
  if (from.level === 'formulas') return UNDER_FORMULAS.includes(to.folder);
  return LAYERS[from.folder]?.includes(to.folder) ?? false;
}

function isPure(source: Source): boolean {
  return source.folder !== '' && !OUTER.includes(source.folder);
}

/** Words that have no place in pure code; the linter knows most of them, not all. */
const IMPURE = /\b(async|await|Promise|Math\.random|console|Date\.now|new Date|setTimeout|performance\.now)\b/;

function impuritiesOf(source: Source): string[] {
  const bare = source.code.replace(/"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`/g, "''");
  return bare.split('\n').flatMap((line) => {
    const found = IMPURE.exec(line)?.[1];
    return found === undefined ? [] : [`${source.path}: ${found}`];
  });
}

interface LintRow {
  files: string[];
  rules: { 'no-restricted-imports'?: [string, { patterns: { regex: string }[] }] };
}

/** The import patterns of each folder, topic and level, out of the linter's own file. */
function readLintRows(): Map<string, RegExp[]> {
  const { overrides } = JSON.parse(readFileSync('.oxlintrc.json', 'utf8')) as { overrides: LintRow[] };
  return new Map(
    overrides.flatMap((row) => {
      const rule = row.rules['no-restricted-imports'];
      const place = /^src\/([\w/]+)\/\*\*$/.exec(row.files[0] ?? '')?.[1];
      return rule && place ? [[place, rule[1].patterns.map((pattern) => new RegExp(pattern.regex))] as const] : [];
    }),
  );
}

/** The files that the linter complains about, when it is run over these with the project's own configuration. */
function lint(files: Record<string, string>): string[] {
  const dir = mkdtempSync(join(tmpdir(), 'lint-'));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(dir, path)), { recursive: true });
    writeFileSync(join(dir, path), text);
  }
  const config = JSON.parse(readFileSync('.oxlintrc.json', 'utf8')) as Record<string, unknown>;
  writeFileSync(join(dir, '.oxlintrc.json'), JSON.stringify({ ...config, options: {} }));
  try {
    return complaintsIn(dir);
  } finally {
    rmSync(dir, { recursive: true });
  }
}

function complaintsIn(dir: string): string[] {
  const program = resolve('node_modules/oxlint/bin/oxlint');
  let text: string;
  try {
    text = execFileSync(process.execPath, [program, '-f', 'unix'], { cwd: dir, encoding: 'utf8' });
  } catch (error) {
    text = (error as { stdout: string }).stdout;
  }
  return [...new Set([...text.matchAll(/^(src\/[^:]+):\d+:\d+:/gm)].map((match) => match[1] ?? ''))].sort();
}
