import { writeFile } from 'node:fs/promises';
import { systemReason } from './readPlan';

/** Writes a file that is not there yet: never over one that is, since it may be somebody's work. Why it could not be written; null when it was. */
export async function writeNew(file: string, text: string): Promise<string | null> {
  try {
    await writeFile(file, text, { flag: 'wx' });
    return null;
  } catch (error) {
    const isThere = typeof error === 'object' && error !== null && 'code' in error && error.code === 'EEXIST';
    return `${file}: ${isThere ? 'the file is there already; it is left as it is' : systemReason(error)}`;
  }
}
