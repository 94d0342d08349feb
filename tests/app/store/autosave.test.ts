import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { renderPlanText } from '../../../src/plan';
import { examplePlan } from '../../support/examplePlans';

const KEY = 'rackway-session';
const plan = examplePlan('cafe-straight');

/** A browser's storage, window and document, as much of them as the page asks for. */
function stubBrowser(kept: Record<string, string> = {}, isFull = false) {
  const stored = new Map(Object.entries(kept));
  const page = new EventTarget();
  const sheet = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => stored.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (isFull) throw new Error('full');
      stored.set(key, text);
    },
  });
  vi.stubGlobal('window', page);
  vi.stubGlobal('document', sheet);
  return { stored, page, sheet };
}

/** The page as it is loaded: what it subscribes to ends with it. */
async function load() {
  vi.resetModules();
  const [store, { actions }, autosave] = await Promise.all([
    import('../../../src/app/store/store'),
    import('../../../src/app/store/actions'),
    import('../../../src/app/store/autosave'),
  ]);
  return { ...store, actions, ...autosave };
}

const storedPlan = (stored: Map<string, string>): string => JSON.parse(stored.get(KEY) ?? '{}').plan;

beforeEach(() => {
  vi.useFakeTimers();
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('work that the browser kept', () => {
  it('is taken up: plan, choice and view', async () => {
    const session = { plan: renderPlanText(plan), selection: [plan.machines[0]?.id], view: { scale: 0.2, dx: 5, dy: 6 } };
    stubBrowser({ [KEY]: JSON.stringify({ format: 'rackway-session-1', ...session, viewport: { width: 1000, height: 600 } }) });
    const { restoreWork, readState } = await load();
    expect(restoreWork()).toBe(true);
    const { editor } = readState();
    expect(editor.history.present).toEqual(plan);
    expect(editor.selection).toEqual(session.selection);
    expect(editor.view).toEqual(session.view);
  });

  it('is none on a first visit', async () => {
    stubBrowser();
    const { restoreWork, readState } = await load();
    const before = readState();
    expect(restoreWork()).toBe(false);
    expect(readState()).toBe(before);
  });

  it('that can’t be read is set aside, not lost, and it is said', async () => {
    const { stored } = stubBrowser({ [KEY]: 'broken' });
    const { restoreWork, readState } = await load();
    expect(restoreWork()).toBe(false);
    expect(stored.get(`${KEY}-set-aside`)).toBe('broken');
    expect(readState().editor.message).toMatchObject({ tone: 'refused', text: expect.stringContaining('set aside') });
  });
});

describe('autosave', () => {
  it('keeps a change of the plan a moment later, once for several', async () => {
    const { stored } = stubBrowser();
    const { startAutosave, actions } = await load();
    startAutosave();
    actions.setField(['title', 'project'], 'One');
    actions.setField(['title', 'project'], 'Two');
    vi.advanceTimersByTime(299);
    expect(stored.has(KEY)).toBe(false);
    vi.advanceTimersByTime(1);
    expect(storedPlan(stored)).toContain('"Two"');
  });

  it('keeps a change of the view, and nothing where neither changed', async () => {
    const { stored } = stubBrowser();
    const { startAutosave, actions, update } = await load();
    startAutosave();
    update({ tab: 'list' });
    vi.advanceTimersByTime(1000);
    expect(stored.has(KEY)).toBe(false);
    actions.editor((editor) => ({ ...editor, view: { scale: 0.5, dx: 0, dy: 0 } }));
    vi.advanceTimersByTime(300);
    expect(JSON.parse(stored.get(KEY) ?? '{}').view).toEqual({ scale: 0.5, dx: 0, dy: 0 });
  });

  it.each([
    { name: 'closed', leave: ({ page }: ReturnType<typeof stubBrowser>) => page.dispatchEvent(new Event('pagehide')) },
    {
      name: 'hidden',
      leave: ({ sheet }: ReturnType<typeof stubBrowser>) => {
        sheet.visibilityState = 'hidden';
        sheet.dispatchEvent(new Event('visibilitychange'));
      },
    },
  ])('keeps the work at once where the page is $name', async ({ leave }) => {
    const browser = stubBrowser();
    const { startAutosave, actions } = await load();
    startAutosave();
    actions.setField(['title', 'project'], 'One');
    leave(browser);
    expect(storedPlan(browser.stored)).toContain('"One"');
  });

  it('does not when the page comes back into sight', async () => {
    const { stored, sheet } = stubBrowser();
    const { startAutosave, actions } = await load();
    startAutosave();
    actions.setField(['title', 'project'], 'One');
    sheet.dispatchEvent(new Event('visibilitychange'));
    expect(stored.has(KEY)).toBe(false);
  });

  it('says so where the browser keeps nothing', async () => {
    stubBrowser({}, true);
    const { startAutosave, actions, readState, saveNow } = await load();
    startAutosave();
    actions.setField(['title', 'project'], 'One');
    vi.advanceTimersByTime(300);
    expect(readState().editor.message).toMatchObject({ tone: 'refused', text: expect.stringContaining('keeps nothing') });
    expect(saveNow()).toBe(false);
  });

  it('saves at once when told, and what is saved is what is taken up', async () => {
    const { stored } = stubBrowser();
    const first = await load();
    first.actions.open(plan, null);
    expect(first.saveNow()).toBe(true);
    stubBrowser(Object.fromEntries(stored));
    const second = await load();
    expect(second.restoreWork()).toBe(true);
    expect(second.readState().editor.history.present).toEqual(plan);
  });
});
