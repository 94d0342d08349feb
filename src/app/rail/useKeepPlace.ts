import { type RefObject, useLayoutEffect, useRef } from 'react';

/**
 * Keeps the keyboard's place in a list whose entries go when they are answered: the focus moves on to the entry after the
 * one that went, else to the one before it, else to `last`. Whoever leaves the list on their own is left alone.
 * Entries bear `data-key`.
 */
export function useKeepPlace(list: RefObject<HTMLElement | null>, last: RefObject<HTMLElement | null>, keys: readonly string[]) {
  const place = useRef<string | null>(null);
  const before = useRef(keys);
  useLayoutEffect(() => {
    const order = before.current;
    before.current = keys;
    const key = place.current;
    if (key === null || keys.includes(key)) return;
    const at = order.indexOf(key);
    const next = [...order.slice(at + 1), ...order.slice(0, at).reverse()].find((other) => keys.includes(other));
    const entry = next === undefined ? null : list.current?.querySelector(`[data-key="${CSS.escape(next)}"]`);
    (entry?.querySelector<HTMLElement>('input, select, textarea, button') ?? last.current)?.focus();
  });
  return {
    onFocus: (e: React.FocusEvent) => {
      place.current = e.target.closest<HTMLElement>('[data-key]')?.dataset['key'] ?? null;
    },
    // Before the field itself hears of it, and perhaps goes.
    onBlurCapture: () => {
      place.current = null;
    },
  };
}
