import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { loadConfigFromFile } from 'vite';
import type { TestProjectConfiguration, UserWorkspaceConfig, ViteUserConfig } from 'vitest/config';
import { BaseSequencer, createVitest, type TestModule, type TestSpecification, type Vitest } from 'vitest/node';
import type { Ask, FileReport, Message, WorkerKind } from './messages';

/** What a worker process does: it keeps one vitest over its copy of the repository and does what it is asked, one thing after the other. */
export async function serve(root: string, kind: WorkerKind): Promise<void> {
  const vitest = await startVitest(root, kind, (module) => send({ kind: 'file', report: createReport(root, module) }));
  const specifications = await vitest.globTestSpecifications();
  const files = new Map(specifications.map((specification) => [specification.moduleId.slice(root.length + 1), specification]));
  let last: string | null = null;
  process.on('message', ({ changed, tests }: Ask) => {
    // What was changed before is whole again.
    for (const file of [last, changed]) if (file !== null) vitest.invalidateFile(join(root, file));
    last = changed;
    const wanted = tests.map((path) => files.get(path) as TestSpecification);
    runTests(vitest, wanted).then(send, (error: unknown) => send({ kind: 'failure', text: String(error) }));
  });
  send({ kind: 'ready', tests: [...files.keys()] });
}

const send = (message: Message): void => {
  process.send?.(message);
};

async function runTests(vitest: Vitest, tests: TestSpecification[]): Promise<Message> {
  const { unhandledErrors } = await vitest.runTestSpecifications(tests);
  return { kind: 'done', hasStrayErrors: unhandledErrors.length > 0 };
}

/** The order is ours: what is likely to notice comes first. */
class GivenOrder extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return Promise.resolve(files);
  }
}

/** The repository's unit tests as they are set up there, quiet and in our order. */
async function startVitest(root: string, kind: WorkerKind, onTestModuleEnd: (module: TestModule) => void): Promise<Vitest> {
  const { plugins, test } = await readUnitProject(root);
  const common = {
    ...test,
    pool: 'threads' as const,
    maxWorkers: 1,
    silent: true,
    reporters: [{ onTestModuleEnd }],
    sequence: { sequencer: GivenOrder },
    // Two copies share the machine with whatever else runs: a slow test is no failing one. Hangs are ended from outside.
    testTimeout: 600_000,
    hookTimeout: 600_000,
  };
  // To see what each test file reaches, nothing may be kept from the file before.
  const reach = { isolate: true, setupFiles: [fileURLToPath(new URL('reachSetup.ts', import.meta.url))] };
  const options = kind === 'reach' ? { ...common, ...reach } : { ...common, bail: 1 };
  return createVitest('test', { root, config: false, watch: false }, { root, plugins, logLevel: 'silent', test: options });
}

async function readUnitProject(root: string): Promise<Pick<UserWorkspaceConfig, 'plugins' | 'test'>> {
  const loaded = await loadConfigFromFile({ command: 'serve', mode: 'test' }, join(root, 'vite.config.ts'), root, 'silent');
  const config: ViteUserConfig | undefined = loaded?.config;
  const unit = config?.test?.projects?.find(isUnit);
  if (unit === undefined) throw new Error('vite.config.ts has no project of tests called unit');
  return { plugins: config?.plugins, test: unit.test };
}

const isUnit = (project: TestProjectConfiguration): project is UserWorkspaceConfig =>
  typeof project === 'object' && 'test' in project && project.test?.name === 'unit';

function createReport(root: string, module: TestModule): FileReport {
  const { duration, collectDuration } = module.diagnostic();
  return {
    path: module.moduleId.slice(root.length + 1),
    passed: module.ok(),
    seconds: (duration + collectDuration) / 1000,
    reached: module.meta().reachedMutants ?? null,
    isSlow: [...module.children.allTests('failed')].some((test) => test.result().errors?.some(isTimeout)),
  };
}

const isTimeout = ({ message }: { message: string }): boolean => /^(Test|Hook) timed out in /.test(message);
