import { useEffect } from 'react';
import { createPointerEvent, type PointerInput } from '../../editor';
import type { Point } from '../../geometry';
import { acts } from '../store/acts';
import { readState, update } from '../store/store';
import { findTypable } from './findTypable';

/**
 * Turns what the browser says of pointers into editor events. One pointer is a press or a drag; a
 * second finger turns the gesture into a pinch (what the first had begun is dropped).
 */
export function usePointer(surface: React.RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const element = surface.current;
    if (!element) return;
    const fingers = new Map<number, Point>();
    const at = (e: MouseEvent): Point => {
      const box = element.getBoundingClientRect();
      return { x: e.clientX - box.left, y: e.clientY - box.top };
    };
    const send = (type: PointerInput['type'], e: PointerEvent | MouseEvent) =>
      acts.event(
        createPointerEvent(readState().editor.view, type, at(e), { ...modifiers(e), pointer: pointerKind(e), button: buttonOf(e) }),
      );

    const down = (e: PointerEvent) => {
      element.focus({ preventScroll: true });
      element.setPointerCapture(e.pointerId);
      fingers.set(e.pointerId, at(e));
      if (fingers.size === 2) return acts.event({ type: 'cancel' });
      if (fingers.size > 2) return;
      const typable = findTypable(at(e));
      if (typable) return update({ typing: typable });
      update({ typing: null });
      send('down', e);
    };
    const move = (e: PointerEvent) => {
      if (fingers.size >= 2) return pinch(fingers, e.pointerId, at(e));
      send('move', e);
    };
    const up = (e: PointerEvent) => {
      const wasPinch = fingers.size >= 2;
      fingers.delete(e.pointerId);
      if (!wasPinch && !readState().typing) send('up', e);
    };
    const cancel = (e: PointerEvent) => {
      fingers.delete(e.pointerId);
      acts.event({ type: 'cancel' });
    };
    const leave = (e: PointerEvent) => {
      if (e.pointerType !== 'touch' && e.buttons === 0) acts.event({ type: 'leave' });
    };
    const double = (e: MouseEvent) => send('double', e);
    const wheel = (e: WheelEvent) => {
      e.preventDefault();
      const unit = e.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      acts.event({ type: 'wheel', screen: at(e), deltaX: e.deltaX * unit, deltaY: e.deltaY * unit, ...modifiers(e) });
    };
    const menu = (e: Event) => e.preventDefault();

    const listen = new AbortController();
    const on = { signal: listen.signal };
    element.addEventListener('pointerdown', down, on);
    element.addEventListener('pointermove', move, on);
    element.addEventListener('pointerup', up, on);
    element.addEventListener('pointercancel', cancel, on);
    element.addEventListener('pointerleave', leave, on);
    element.addEventListener('dblclick', double, on);
    element.addEventListener('wheel', wheel, { ...on, passive: false });
    element.addEventListener('contextmenu', menu, on);
    return () => listen.abort();
  }, [surface]);
}

function pinch(fingers: Map<number, Point>, id: number, to: Point) {
  const before = spread(fingers);
  fingers.set(id, to);
  const after = spread(fingers);
  acts.event({
    type: 'pinch',
    screen: after.middle,
    factor: before.distance > 0 ? after.distance / before.distance : 1,
    dx: after.middle.x - before.middle.x,
    dy: after.middle.y - before.middle.y,
  });
}

function spread(fingers: Map<number, Point>) {
  const [a, b] = [...fingers.values()] as [Point, Point];
  return { middle: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, distance: Math.hypot(a.x - b.x, a.y - b.y) };
}

const modifiers = (e: MouseEvent) => ({ shift: e.shiftKey, alt: e.altKey, ctrl: e.ctrlKey || e.metaKey });

const pointerKind = (e: PointerEvent | MouseEvent) =>
  'pointerType' in e && (e.pointerType === 'touch' || e.pointerType === 'pen') ? e.pointerType : 'mouse';

const buttonOf = (e: MouseEvent) => (e.button === 1 || e.button === 2 ? e.button : 0);
