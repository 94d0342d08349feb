import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LAYERS, OUTER, PURE_PACKAGES } from './layers.ts';
import { type Import, readSources, type Source } from './sources.ts';

const folders = Object.keys(LAYERS);
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
  it('forbids exactly what the table forbids', () => {
    const patterns = readLintPatterns();
    const wrong = folders.flatMap((from) =>
      folders
        .filter((to) => to !== from)
        .flatMap((to) => {
          const isForbidden = (specifier: string) => (patterns.get(from) ?? []).some((pattern) => pattern.test(specifier));
          const expected = !LAYERS[from]?.includes(to);
          const says = [`../${to}`, `../../${to}`].map(isForbidden);
          return says.every((one) => one === expected) && isForbidden(`../${to}/inner`) ? [] : [`${from} → ${to}`];
        }),
    );
    expect(wrong).toEqual([]);
  });

  it('fires on each kind of fault, and on nothing that is allowed', () => {
    expect(lint({ 'src/scene/good.ts': "import { a } from '../plan';\nexport const b = a;\n" })).toEqual([]);
    const faults = {
      'src/geometry/up.ts': "import { a } from '../plan';\nexport const b = a;\n",
      'src/checks/rules/up.ts': "import type { A } from '../../sheets';\nexport type B = A;\n",
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
  const [to = ''] = one.target.split('/');
  if (to === source.folder || source.folder === '') return [];
  if (!LAYERS[source.folder]?.includes(to)) return fault('goes against the arrows');
  return one.target === to ? [] : fault('goes past the index');
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

/** The import patterns of each folder, out of the linter's own file. */
function readLintPatterns(): Map<string, RegExp[]> {
  const { overrides } = JSON.parse(readFileSync('.oxlintrc.json', 'utf8')) as { overrides: LintRow[] };
  return new Map(
    overrides.flatMap((row) => {
      const rule = row.rules['no-restricted-imports'];
      const folder = /^src\/(\w+)\/\*\*$/.exec(row.files[0] ?? '')?.[1];
      return rule && folder ? [[folder, rule[1].patterns.map((pattern) => new RegExp(pattern.regex))] as const] : [];
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
