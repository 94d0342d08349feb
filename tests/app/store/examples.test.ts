import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { loadExample } from '../../../src/app/store/examples';
import { examplePlan } from '../../support/examplePlans';

afterEach(() => vi.unstubAllGlobals());

const answer = (response: () => Promise<Response>) => {
  const asked: string[] = [];
  vi.stubGlobal('fetch', (address: string) => {
    asked.push(address);
    return response();
  });
  return asked;
};

describe('an example room', () => {
  it('is fetched from beside the page', async () => {
    const text = readFileSync('public/examples/cafe-straight.rackway.json', 'utf8');
    const asked = answer(async () => new Response(text));
    expect(await loadExample('cafe-straight')).toMatchObject({ ok: true, plan: examplePlan('cafe-straight') });
    expect(asked).toEqual(['examples/cafe-straight.rackway.json']);
  });

  it.each([
    { name: 'the server has none', response: async () => new Response('', { status: 404 }), reason: /the server answers 404/ },
    { name: 'there is no network', response: async () => Promise.reject(new Error('no route')), reason: /no route/ },
  ])('is refused with the reason where $name', async ({ response, reason }) => {
    answer(response);
    expect(await loadExample('cafe-straight')).toMatchObject({
      ok: false,
      problem: { code: 'unreachable', reason: expect.stringMatching(reason) },
    });
  });

  it('that is no plan is refused', async () => {
    answer(async () => new Response('{}'));
    expect(await loadExample('cafe-straight')).toMatchObject({ ok: false });
  });
});
