import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Tests that need the built page and a browser. They share one build, made in the global setup. */
const journeys = 'tests/journeys/**/*.test.ts';

/** One module that Node and workers can import. */
const core = {
  outDir: '../dist/core',
  emptyOutDir: true,
  copyPublicDir: false,
  minify: false,
  lib: { entry: at('src/index.ts'), formats: ['es' as const], fileName: () => 'rackway.js' },
  rollupOptions: { output: { codeSplitting: false } },
  target: 'es2022',
};

export default defineConfig(({ mode }) => ({
  // The page lives in src; the tests see the whole repository.
  root: mode === 'test' ? '.' : 'src',
  base: './',
  publicDir: '../public',
  plugins: [react()],
  // `--mode core` builds the core alone, for scripts; otherwise the page. The weight that counts is the compressed one: tests/house/sizes.mjs.
  build: mode === 'core' ? core : { outDir: '../dist', emptyOutDir: true, manifest: true, chunkSizeWarningLimit: 1000 },
  test: {
    setupFiles: [at('tests/support/speakEnglish.ts')],
    reporters: ['default', at('tests/house/lastLine.ts')],
    coverage: { include: ['src/**'], reportsDirectory: 'coverage' },
    projects: [
      {
        extends: true,
        // Pure code: the files of one worker share what they import, which halves the work.
        test: { name: 'unit', include: ['tests/**/*.test.{ts,tsx}'], exclude: [journeys], isolate: false },
      },
      {
        extends: true,
        test: {
          setupFiles: [at('tests/support/speakEnglish.ts')],
          name: 'journeys',
          include: [journeys],
          globalSetup: [at('tests/journeys/globalSetup.ts')],
          // The files of one worker share the connection to the browser; two workers keep it busy.
          isolate: false,
          maxWorkers: 2,
          // After the unit tests, which then have both cores to themselves.
          sequence: { groupOrder: 1 },
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
}));
