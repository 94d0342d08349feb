import { createReadStream, createWriteStream, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { createBrotliDecompress } from 'node:zlib';
import { type Browser, type BrowserServer, chromium, type LaunchOptions } from 'playwright-core';
import { extract } from 'tar-fs';

/** How to start one browser: the program, and what it needs to find its own libraries and fonts. */
interface Program {
  executablePath: string;
  env: Record<string, string>;
}

/** Our own arguments: the package's list holds `--single-process`, under which a second context ends the browser. */
const ARGS = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'];

const HELP =
  'No browser for the journeys: install Chromium (Debian: apt-get install chromium) and set RACKWAY_BROWSER to its path, /usr/bin/chromium say.';

/**
 * The packaged browser sees the packaged fonts and no others, so that pictures are the same on every machine;
 * the package's own file looks for them at fixed places.
 */
const fontsConf = (cacheDir: string) => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir prefix="relative">fonts/fonts</dir>
  <cachedir>${cacheDir}</cachedir>
</fontconfig>
`;

/** Starts a headless Chromium: the one that RACKWAY_BROWSER names, else the one among the development packages. */
export const launchBrowser = (): Promise<Browser> => start((options) => chromium.launch(options));

/** The same, to be shared by processes that connect to its address. */
export const serveBrowser = (): Promise<BrowserServer> => start((options) => chromium.launchServer(options));

async function start<T>(launch: (options: LaunchOptions) => Promise<T>): Promise<T> {
  const { executablePath, env } = await findProgram();
  return launch({ executablePath, env: { ...process.env, ...env }, args: ARGS }).catch((cause: unknown) => {
    throw new Error(HELP, { cause });
  });
}

async function findProgram(): Promise<Program> {
  const named = process.env.RACKWAY_BROWSER;
  if (named) return { executablePath: named, env: {} };
  if (process.platform !== 'linux' || process.arch !== 'x64') throw new Error(HELP);
  return unpackProgram();
}

/**
 * Unpacks the packaged browser once. It is unpacked under a name of this process and renamed when whole,
 * so that parallel test files never start half a program.
 */
async function unpackProgram(): Promise<Program> {
  const bin = join(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')), '../../bin');
  const dir = resolve('node_modules/.cache', `browser-${versionBeside(bin)}`);
  if (!existsSync(dir)) {
    const own = `${dir}.${process.pid}`;
    mkdirSync(own, { recursive: true });
    await unpackInto(own, bin);
    writeFileSync(join(own, 'fonts.conf'), fontsConf(join(dir, 'fonts-cache')));
    try {
      renameSync(own, dir);
    } catch {
      // Another test file was first; its copy serves.
      rmSync(own, { recursive: true, force: true });
    }
  }
  const env = { LD_LIBRARY_PATH: join(dir, 'al2023/lib'), FONTCONFIG_FILE: join(dir, 'fonts.conf') };
  return { executablePath: join(dir, 'chromium'), env };
}

async function unpackInto(dir: string, bin: string): Promise<void> {
  const read = (file: string) => createReadStream(join(bin, file));
  const inflate = () => createBrotliDecompress({ chunkSize: 2 ** 21 });
  await Promise.all([
    pipeline(read('chromium.br'), inflate(), createWriteStream(join(dir, 'chromium'), { mode: 0o755 })),
    pipeline(read('al2023.tar.br'), inflate(), extract(join(dir, 'al2023'))),
    pipeline(read('swiftshader.tar.br'), inflate(), extract(dir)),
    pipeline(read('fonts.tar.br'), inflate(), extract(join(dir, 'fonts'))),
  ]);
}

function versionBeside(bin: string): string {
  const { version } = JSON.parse(readFileSync(join(bin, '../package.json'), 'utf8')) as { version: string };
  return version;
}
