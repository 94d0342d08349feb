import type { EditorState, PointerInput } from '../types';
import { panBy } from '../view/view';
import type { Step, Tool } from './tool';
import type { PanState } from './toolState';

const idle: PanState = { tool: 'pan', name: 'idle' };

/** Slides the paper. */
export const panTool: Tool<PanState> = {
  id: 'pan',
  name: 'Slide the paper',
  start: () => idle,
  hint: () => 'Drag to slide the paper.',
  cursor: ({ name }) => (name === 'panning' ? 'grabbing' : 'grab'),
  transitions: {
    idle: { down: (_state, { screen }) => ({ tool: { tool: 'pan', name: 'panning', screen } }) },
    panning: { move: slide, up: () => ({ tool: idle }), cancel: () => ({ tool: idle }) },
  },
};

function slide(state: Extract<PanState, { name: 'panning' }>, { screen }: PointerInput, { view }: EditorState): Step {
  return { tool: { ...state, screen }, view: panBy(view, screen.x - state.screen.x, screen.y - state.screen.y) };
}
