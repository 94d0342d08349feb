import { describe, expect, it, vi } from 'vitest';
import { freshStore } from './freshStore';

describe('the store', () => {
  it('tells its listeners of what is really new, and only of that', () => {
    const { readState, subscribe, update } = freshStore();
    const listener = vi.fn<() => void>();
    subscribe(listener);
    update({ tab: 'list' });
    expect(readState().tab).toBe('list');
    expect(listener).toHaveBeenCalledTimes(1);
    const before = readState();
    update({ tab: 'list', finding: null });
    update(() => ({}));
    expect(listener).toHaveBeenCalledTimes(1);
    expect(readState()).toBe(before);
  });

  it('changes from what it holds, and leaves the rest as it is', () => {
    const { readState, update } = freshStore();
    const { editor } = readState();
    update((s) => ({ isElevationOpen: !s.isElevationOpen }));
    expect(readState().isElevationOpen).toBe(false);
    expect(readState().editor).toBe(editor);
  });

  it('no longer tells who has left', () => {
    const { subscribe, update } = freshStore();
    const [stays, leaves] = [vi.fn<() => void>(), vi.fn<() => void>()];
    subscribe(stays);
    const leave = subscribe(leaves);
    leave();
    update({ theme: 'night' });
    expect([stays.mock.calls.length, leaves.mock.calls.length]).toEqual([1, 0]);
  });

  it('begins at work by day, with nothing chosen and no checks', () => {
    const { readState } = freshStore();
    expect(readState()).toMatchObject({
      page: 'work',
      pane: null,
      theme: 'day',
      tab: 'card',
      loadedChecks: 'none',
      parkedPlan: null,
      finding: null,
      typing: null,
      fileName: null,
    });
  });
});
