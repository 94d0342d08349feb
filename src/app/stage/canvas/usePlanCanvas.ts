import { type RefObject, useEffect, useRef, useState } from 'react';
import type { Point } from '../../../geometry';
import { readState, subscribe } from '../../store/store';
import { deriveShown } from './deriveShown';
import { type Picked, PlanCanvas } from './PlanCanvas';

/** Asks the canvas what lies under a point of it (px), as the page then is; `reachPx`: how near counts as on it. */
export interface Picker {
  readonly pick: (point: Point, reachPx: number) => Picked | null;
  readonly pickAll: (point: Point, reachPx: number) => readonly Picked[];
}

const NO_PICKER: Picker = { pick: () => null, pickAll: () => [] };

/**
 * Keeps a canvas in the container in step with the page once it has its size, painting once a frame at most. What goes wrong
 * is thrown where React can catch it.
 */
export function usePlanCanvas(container: RefObject<HTMLElement | null>, isSized: boolean): RefObject<Picker> {
  const picker = useRef(NO_PICKER);
  const [trouble, setTrouble] = useState<{ error: unknown } | null>(null);
  useEffect(() => {
    if (!isSized || container.current === null) return;
    const canvas = new PlanCanvas(container.current);
    const frames = followStore(
      () => canvas.show(deriveShown(readState())),
      (error) => setTrouble({ error }),
    );
    picker.current = {
      pick: (...at) => (frames.catchUp() ? canvas.pick(...at) : null),
      pickAll: (...at) => (frames.catchUp() ? canvas.pickAll(...at) : []),
    };
    return () => {
      picker.current = NO_PICKER;
      frames.stop();
      canvas.destroy();
    };
  }, [container, isSized]);
  if (trouble !== null) throw trouble.error;
  return picker;
}

/** Paints now, and in the next frame after each change of the store. `catchUp` paints what is due; false where that went wrong. */
function followStore(paint: () => void, refuse: (error: unknown) => void) {
  let frame: number | null = null;
  let isSound = true;
  const paintNow = () => {
    frame = null;
    try {
      paint();
    } catch (error) {
      isSound = false;
      refuse(error);
    }
  };
  const stop = () => {
    if (frame !== null) cancelAnimationFrame(frame);
    frame = null;
  };
  const unsubscribe = subscribe(() => {
    frame ??= requestAnimationFrame(paintNow);
  });
  paintNow();
  return {
    catchUp: () => {
      if (frame === null) return isSound;
      stop();
      paintNow();
      return isSound;
    },
    stop: () => {
      stop();
      unsubscribe();
    },
  };
}
