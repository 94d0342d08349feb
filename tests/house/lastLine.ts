import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with one plain line that a person or a script can read: `N passed, N failed`, and `, N skipped` when any were. */
export default class LastLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandledErrors: readonly unknown[]): void {
    const counts = countStates(modules);
    const failed = counts.failed + unhandledErrors.length;
    const skipped = counts.skipped > 0 ? `, ${counts.skipped} skipped` : '';
    process.on('exit', (code) => {
      // A run can fail outside of any test, before the first (the page did not build): that is one failure, not none.
      const told = code !== 0 && failed === 0 ? 1 : failed;
      process.stdout.write(`${counts.passed} passed, ${told} failed${skipped}\n`);
    });
  }
}

function countStates(modules: readonly TestModule[]): Record<'passed' | 'failed' | 'skipped', number> {
  const counts = { passed: 0, failed: 0, skipped: 0 };
  for (const module of modules) {
    // A file that fails before its first test (an import error, say) holds no test to count.
    if (module.errors().length > 0) counts.failed += 1;
    for (const test of module.children.allTests()) {
      const { state } = test.result();
      if (state === 'pending') counts.failed += 1;
      else counts[state] += 1;
    }
  }
  return counts;
}
