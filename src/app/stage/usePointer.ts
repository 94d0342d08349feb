import { useEffect } from 'react';
import { createPointerEvent, type Hit, type PointerInput, type PointerKind, REACH_PX } from '../../editor';
import type { Point } from '../../geometry';
import { actions } from '../store/actions';
import { readState, update } from '../store/store';
import type { Picked } from './canvas/PlanCanvas';
import type { Picker } from './canvas/usePlanCanvas';
import { createPinch } from './createPinch';

/**
 * Turns what the browser says of pointers into editor events. One pointer is a press or a drag; a
 * second finger turns the gesture into a pinch (what the first had begun is dropped).
 */
export function usePointer(surface: React.RefObject<HTMLElement | null>, picker: React.RefObject<Picker>): void {
  useEffect(() => {
    const element = surface.current;
    if (!element) return;
    const fingers = new Map<number, Point>();
    const at = (e: MouseEvent): Point => {
      const box = element.getBoundingClientRect();
      return { x: e.clientX - box.left, y: e.clientY - box.top };
    };
    const send = (type: PointerInput['type'], e: PointerEvent | MouseEvent, under: readonly Hit[] = []) => {
      const options = { ...modifiers(e), pointer: pointerKind(e), button: buttonOf(e), under };
      actions.event(createPointerEvent(readState().editor.view, type, at(e), options));
    };

    const down = (e: PointerEvent) => {
      element.focus({ preventScroll: true });
      element.setPointerCapture(e.pointerId);
      fingers.set(e.pointerId, at(e));
      if (fingers.size === 2) return actions.event({ type: 'cancel' });
      if (fingers.size > 2) return;
      const picked = e.button === 0 && isChoosing() ? picker.current.pickAll(at(e), REACH_PX[pointerKind(e)]) : [];
      const [top] = picked;
      const typing = top?.kind === 'figure' ? top.figure : null;
      update({ typing });
      if (typing === null) send('down', e, hitsOf(picked));
    };
    const move = (e: PointerEvent) => {
      if (fingers.size >= 2) {
        const before = [...fingers.values()];
        fingers.set(e.pointerId, at(e));
        return actions.event(createPinch(before, [...fingers.values()]));
      }
      if (fingers.size === 1) return send('move', e);
      const top = isChoosing() ? picker.current.pick(at(e), REACH_PX[pointerKind(e)]) : null;
      element.dataset['over'] = top?.kind ?? 'paper';
      send('move', e, top === null ? [] : hitsOf([top]));
    };
    const up = (e: PointerEvent) => {
      const wasPinch = fingers.size >= 2;
      fingers.delete(e.pointerId);
      if (!wasPinch && !readState().typing) send('up', e);
    };
    const cancel = (e: PointerEvent) => {
      fingers.delete(e.pointerId);
      actions.event({ type: 'cancel' });
    };
    const leave = (e: PointerEvent) => {
      if (e.pointerType !== 'touch' && e.buttons === 0) actions.event({ type: 'leave' });
    };
    const double = (e: MouseEvent) => send('double', e);
    const wheel = (e: WheelEvent) => {
      e.preventDefault();
      const unit = e.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      actions.event({ type: 'wheel', screen: at(e), deltaX: e.deltaX * unit, deltaY: e.deltaY * unit, ...modifiers(e) });
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
  }, [surface, picker]);
}

/** Other tools put something on the paper, whatever lies there. */
const isChoosing = () => readState().editor.tool.tool === 'select';

const hitsOf = (picked: readonly Picked[]): Hit[] => picked.flatMap((each) => (each.kind === 'hit' ? each.hit : []));

const modifiers = (e: MouseEvent) => ({ shift: e.shiftKey, alt: e.altKey, ctrl: e.ctrlKey || e.metaKey });

const pointerKind = (e: PointerEvent | MouseEvent): PointerKind =>
  'pointerType' in e && (e.pointerType === 'touch' || e.pointerType === 'pen') ? e.pointerType : 'mouse';

const buttonOf = (e: MouseEvent): 0 | 1 | 2 => (e.button === 1 || e.button === 2 ? e.button : 0);
