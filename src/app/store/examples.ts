import { parsePlan, type ReadResult } from '../../plan';

/** Fetches an example room that ships with the page. */
export async function loadExample(name: string): Promise<ReadResult> {
  try {
    const response = await fetch(`examples/${name}.rackway.json`);
    if (!response.ok) throw new Error(`the server answers ${response.status}`);
    return parsePlan(await response.text());
  } catch (error) {
    return {
      ok: false,
      problem: {
        code: 'unreachable',
        path: [],
        reason: `the example can’t be fetched: ${error instanceof Error ? error.message : 'no answer'}`,
      },
    };
  }
}
