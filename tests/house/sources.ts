import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, sep } from 'node:path';

/** One source file of src, with its comments taken out and its imports read. */
export interface Source {
  /** From src, with forward slashes: `scene/joint.ts`. */
  path: string;
  /** The folder of src that it belongs to; empty for a file that lies in src itself. */
  folder: string;
  /** Its text without comments. */
  code: string;
  imports: Import[];
}

/** What one import statement asks for: a file of src (from src, without extension) or a package. */
export type Import = { kind: 'file'; specifier: string; target: string } | { kind: 'package'; specifier: string; name: string };

/** Every TypeScript and JavaScript file under src, read with regular expressions alone: a second opinion beside the linter's parser. */
export function readSources(): Source[] {
  const names = readdirSync('src', { recursive: true }).map((name) => String(name).split(sep).join('/'));
  return names.filter((name) => /\.(ts|tsx|mjs|js)$/.test(name)).map(readSource);
}

function readSource(path: string): Source {
  const code = withoutComments(readFileSync(join('src', path), 'utf8'));
  return { path, folder: path.includes('/') ? (path.split('/')[0] ?? '') : '', code, imports: importsOf(path, code) };
}

/** `import … from 'x'`, `export … from 'x'`, `import 'x'`, `import('x')` and `new URL('x', import.meta.url)`. */
const IMPORT = /(?:\bfrom\s+|\bimport\s*\(?\s*|\bnew URL\(\s*)(['"`])([\w@./:?#-]+)\1/g;

function importsOf(path: string, code: string): Import[] {
  return [...code.matchAll(IMPORT)].map(([, , specifier = '']) => toImport(path, specifier));
}

function toImport(path: string, specifier: string): Import {
  if (!specifier.startsWith('.')) return { kind: 'package', specifier, name: packageOf(specifier) };
  const joined = normalize(join(dirname(path), specifier.replace(/\?.*$/, '')));
  return {
    kind: 'file',
    specifier,
    target: joined
      .split(sep)
      .join('/')
      .replace(/\.(ts|tsx|mjs|js)$/, ''),
  };
}

function packageOf(specifier: string): string {
  return specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
}

/** Keeps strings whole: an address in one holds two slashes that begin no comment. */
function withoutComments(text: string): string {
  const token = /("(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`)|\/\*[\s\S]*?\*\/|\/\/[^\n]*/g;
  return text.replace(token, (_all, string: string | undefined) => string ?? ' ');
}
