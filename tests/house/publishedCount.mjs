// Prints how many check values stand in tests/published, file by file (one file a source), from the comments beside them:
// `// source: rows · document, place · confidence · tolerance`. What is from memory and what is a regression is counted apart.
// A comment covers what follows until the next one: each row of a table is a value, a test without a table is one.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const FOLDER = 'tests/published';
const KINDS = ['source', 'memory', 'regression'];

const files = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.test.ts'))
  .map((name) => ({ name, ...countValues(readFileSync(join(FOLDER, name), 'utf8')) }))
  .sort((a, b) => b.source - a.source || a.name.localeCompare(b.name));

const sources = files.filter(({ source }) => source > 0);
const sum = (kind) => files.reduce((total, file) => total + file[kind], 0);
const lines = files.map(({ name, document, ...counts }) => {
  const rest = KINDS.slice(1).flatMap((kind) => (counts[kind] > 0 ? [`${counts[kind]} ${kind}`] : []));
  const more = rest.length > 0 ? ` (and ${rest.join(', ')})` : '';
  return `${String(counts.source).padStart(4)}  ${name.replace('.test.ts', '')}: ${document}${more}`;
});
const total = `${sum('source')} published values in ${sources.length} files; ${sum('memory')} from memory, ${sum('regression')} regressions`;
process.stdout.write(`${[...lines, total].join('\n')}\n`);

/** Values by kind of comment, and the document that a file's first comment names. */
function countValues(text) {
  const counts = { source: 0, memory: 0, regression: 0, document: 'no comment names a source' };
  let kind = null;
  let table = null;
  for (const line of text.split('\n')) {
    const comment = /^\s*\/\/ (source|memory|regression): [^·]*· ([^·]*)/.exec(line);
    if (comment !== null) {
      if (kind === null) counts.document = comment[2].trim();
      kind = comment[1];
    }
    const indent = line.search(/\S/);
    if (table !== null && indent === table && /^\s*\]/.test(line)) table = null;
    if (kind !== null) counts[kind] += valuesOn(line, indent, table);
    if (/\beach\(\[$/.test(line)) table = indent;
  }
  return counts;
}

function valuesOn(line, indent, table) {
  if (table !== null) return indent === table + 2 && /^\s*[[{'"\d-]/.test(line) ? 1 : 0;
  if (/\beach\(\[.+\]/.test(line)) return countItems(line.slice(line.indexOf('each([') + 6));
  return /^\s*(test|it)\(/.test(line) ? 1 : 0;
}

/** Items of a table that stands on one line: what lies between commas at its own depth. */
function countItems(items) {
  let [depth, count] = [0, 1];
  for (const sign of items) {
    if ('[{('.includes(sign)) depth += 1;
    if (sign === ']' && depth === 0) break;
    if (']})'.includes(sign)) depth -= 1;
    if (sign === ',' && depth === 0) count += 1;
  }
  return count;
}
