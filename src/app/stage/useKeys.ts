import { useEffect } from 'react';
import { type KeyInput, wantsKey } from '../../editor';
import { actions } from '../store/actions';
import { readState } from '../store/store';

/** Passes keys to the editor, unless something that takes typing, a menu or a pane has the focus. */
export function useKeys(): void {
  useEffect(() => {
    const press = (e: KeyboardEvent) => {
      const { page, pane, editor } = readState();
      if (page !== 'work' || pane !== null || e.defaultPrevented || isTakenElsewhere(e)) return;
      const input: KeyInput = { type: 'key', key: e.key, shift: e.shiftKey, alt: e.altKey, ctrl: e.ctrlKey || e.metaKey };
      if (!wantsKey(editor, input)) return slide(e);
      e.preventDefault();
      actions.event(input);
    };
    const release = (e: KeyboardEvent) => {
      if (e.key === ' ' && readState().editor.tool.tool === 'pan') actions.tool({ tool: 'select' });
    };
    window.addEventListener('keydown', press);
    window.addEventListener('keyup', release);
    return () => {
      window.removeEventListener('keydown', press);
      window.removeEventListener('keyup', release);
    };
  }, []);
}

/** The space bar, held, slides the paper where nothing is being typed. */
function slide(e: KeyboardEvent) {
  if (e.key !== ' ') return;
  e.preventDefault();
  const { tool } = readState().editor;
  if (tool.tool === 'select' && tool.name === 'idle') actions.tool({ tool: 'pan' });
}

const ON_SURFACE_ONLY = new Set(['Tab', 'Enter', ' ', 'ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight']);

/** Keys that walk the page or work its controls are the editor's only while the paper has the focus. */
function isTakenElsewhere(e: KeyboardEvent): boolean {
  const target = e.target instanceof HTMLElement ? e.target : null;
  if (target?.closest('input, select, textarea, [contenteditable], [popover], dialog')) return true;
  const isOnPaper = target === null || target === document.body || target.closest('.surface') !== null;
  return !isOnPaper && ON_SURFACE_ONLY.has(e.key);
}
