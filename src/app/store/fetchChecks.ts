import { loadEnglish } from '../../text';
import { saveNow } from './autosave';
import { update } from './store';
import { takeChecks } from './work';

/**
 * Fetches the checks: those of the line and its room, then those that stand on figures and bring every formula along. The canvas
 * need not wait for them. Until all are here the page says that they are coming; where they can't be fetched it says so, and it
 * can be tried again.
 */
export async function fetchChecks(): Promise<void> {
  update({ loadedChecks: 'none' });
  if (!(await takeAllChecks())) update({ loadedChecks: 'failed' });
}

/**
 * Tries again. Some browsers remember that a part of a page could not be fetched and never ask for it again: there the page is
 * loaded anew, but only when its server answers and the plan is kept.
 */
export async function fetchChecksAgain(): Promise<void> {
  update({ loadedChecks: 'none' });
  if (await takeAllChecks()) return;
  if ((await isServed()) && saveNow()) location.reload();
  else update({ loadedChecks: 'failed' });
}

/** Begun with the page, so that they are here about when it is painted. */
export const fetchOwnChecks = () => import('./ownChecks');

async function takeAllChecks(): Promise<boolean> {
  try {
    const [{ OWN_CHECKS }] = await Promise.all([fetchOwnChecks(), loadEnglish()]);
    takeChecks(OWN_CHECKS, OWN_CHECKS);
    update({ loadedChecks: 'line' });
    takeChecks((await import('../../topics/registry')).CHECKS, OWN_CHECKS);
    update({ loadedChecks: 'all' });
    return true;
  } catch {
    return false;
  }
}

async function isServed(): Promise<boolean> {
  try {
    return (await fetch(location.href, { cache: 'no-store' })).ok;
  } catch {
    return false;
  }
}
