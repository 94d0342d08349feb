import { build } from 'vite';

/** Builds the core as the package hands it out (`dist/core`), once for all that ask in this process. */
export const buildCore = (): Promise<void> => {
  built ??= build({ mode: 'core', logLevel: 'warn' }).then(() => undefined);
  return built;
};

let built: Promise<void> | undefined;
