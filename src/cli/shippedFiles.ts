import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** A file that ships with the program in `public`, wherever this module runs from: its source, or the bundle in a folder below the project. */
export function shippedFile(...parts: string[]): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'public/fonts')) && dirname(folder) !== folder) folder = dirname(folder);
  return join(folder, 'public', ...parts);
}
