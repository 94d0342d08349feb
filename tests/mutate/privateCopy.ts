import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';

/** A copy of the repository in which sources can be broken. */
export interface PrivateCopy {
  root: string;
  write: (file: string, text: string) => void;
  /** As it is in the repository. */
  restore: (file: string) => void;
  remove: () => void;
}

/** It lies outside of the repository: inside `node_modules` its sources would be taken for those of a package. */
export function createCopy(top: string): PrivateCopy {
  const root = realpathSync(mkdtempSync(join(tmpdir(), 'mutate-')));
  cpSync(top, root, { recursive: true, filter: (path) => !isLeftOut(relative(top, path)) });
  linkPackages(realpathSync(join(top, 'node_modules')), join(root, 'node_modules'));
  const write = (file: string, text: string) => writeFileSync(join(root, file), text);
  return {
    root,
    write,
    restore: (file) => write(file, readFileSync(join(top, file), 'utf8')),
    remove: () => rmSync(root, { recursive: true, force: true }),
  };
}

const LEFT_OUT = new Set(['node_modules', '.git', 'dist', 'coverage']);

const isLeftOut = (path: string): boolean => LEFT_OUT.has(path);

/** One link a package, so that what tests keep beside the packages (`.cache`) is the copy's own. */
function linkPackages(from: string, to: string): void {
  mkdirSync(to);
  const names = readdirSync(from).filter((name) => !name.startsWith('.') || name === '.bin');
  for (const name of names) symlinkSync(join(from, name), join(to, name));
}
