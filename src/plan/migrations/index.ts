import { toVersion2 } from './toVersion2';
import { toVersion3 } from './toVersion3';
import { toVersion4 } from './toVersion4';

/**
 * What brings an older plan up to date. One pure function a version, numbered without a gap: the function at index i turns
 * version OLDEST + i into the next. Never edit one that was released; append, and add a fixture of the version it reads.
 */
export const MIGRATIONS: readonly Migration[] = [toVersion2, toVersion3, toVersion4];

/** Raw JSON in, raw JSON out; it sets the new version itself and must not change what it was given. */
export type Migration = (raw: Record<string, unknown>) => Record<string, unknown>;

/** Oldest version that can be read. */
export const OLDEST_VERSION = 1;

/** Applies every migration after `from`. Throws when a migration does, or when it does not give the version it should. */
export function migratePlan(
  raw: Record<string, unknown>,
  from: number,
  migrations: readonly Migration[] = MIGRATIONS,
  oldest: number = OLDEST_VERSION,
): Record<string, unknown> {
  return migrations.slice(from - oldest).reduce((plan, migrate, index) => {
    const next = migrate(plan);
    const expected = from + index + 1;
    if (next.version !== expected) throw new Error(`migration to version ${expected} gave version ${String(next.version)}`);
    return next;
  }, raw);
}
