import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Whether dist holds the page as its sources are now: written after the last change of any of them. */
export function isBuilt(): boolean {
  return existsSync('dist/index.html') && statSync('dist/index.html').mtimeMs > newestSource();
}

/** Folders count too: removing a file changes nothing but its folder's time. */
function newestSource(): number {
  const inside = ['src', 'public'].flatMap((dir) => [dir, ...readdirSync(dir, { recursive: true }).map((name) => join(dir, String(name)))]);
  const paths = [...inside, 'package-lock.json', 'vite.config.ts'];
  return Math.max(...paths.map((path) => statSync(path).mtimeMs));
}
