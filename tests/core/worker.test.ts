import { readFileSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import { beforeAll, describe, expect, it } from 'vitest';
import { check, deriveScene, type Figure, type Finding, figures, parsePlan } from '../../src';
import { examplePlans } from '../support/examplePlans';
import { buildCore } from './buildCore';

/** In the worker: a plan comes as plain data, and what was worked out of it goes back as such. */
const CODE = `
import { parentPort } from 'node:worker_threads';
import { check, deriveScene, figures } from 'rackway';
parentPort.on('message', (plan) => {
  const scene = deriveScene(plan);
  parentPort.postMessage({ scene, findings: check(scene), figures: figures(scene) });
});
`;

interface Answer {
  scene: unknown;
  findings: Finding[];
  figures: Figure[];
}

const ask = (worker: Worker, plan: unknown): Promise<Answer> =>
  new Promise((resolve, reject) => {
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.postMessage(plan);
  });

describe('the core in a worker thread', () => {
  beforeAll(buildCore, 60_000);

  it.each(examplePlans())('says of $name what it says here', { timeout: 30_000 }, async ({ plan }) => {
    const code = new URL(`data:text/javascript,${encodeURIComponent(CODE.replace("'rackway'", JSON.stringify(coreUrl())))}`);
    const worker = new Worker(code);
    try {
      const scene = deriveScene(plan);
      const answer = await ask(worker, plan);
      expect(answer.findings).toEqual(check(scene));
      expect(answer.figures).toEqual(figures(scene));
      expect(answer.scene).toEqual(scene);
    } finally {
      await worker.terminate();
    }
  });
});

const coreUrl = () => new URL('../../dist/core/rackway.js', import.meta.url).href;

describe('what the core says', () => {
  it.each(examplePlans())('is plain data, of $name', ({ name }) => {
    const read = parsePlan(readFileSync(`public/examples/${name}.rackway.json`, 'utf8'));
    if (!read.ok) throw new Error(read.problem.reason);
    const scene = deriveScene(read.plan);
    for (const item of [...check(scene), ...figures(scene)]) {
      expect(structuredClone(item)).toStrictEqual(item);
      expect(JSON.parse(JSON.stringify(item))).toStrictEqual(item);
    }
  });
});
