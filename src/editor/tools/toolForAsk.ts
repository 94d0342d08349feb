import type { Ask } from '../../rules';
import type { ToolChoice } from './toolState';

/** The tool that puts what is asked for on the paper, where a question asks for no value but for a thing that is not drawn yet. */
export function toolForAsk({ input, path }: Ask): ToolChoice | null {
  switch (path.join('.')) {
    case 'room.openings':
      return { tool: 'add-opening', kind: 'door' };
    case 'room.floorDrains':
      return { tool: 'add-thing', add: { kind: 'floor-drain', drain: 'floor-drain' } };
    case 'room.stubs':
      return { tool: 'add-thing', add: { kind: 'stub', stub: isColdStub(input) ? 'cold-water' : 'hot-water' } };
    case 'things':
      return { tool: 'add-thing', add: { kind: 'thing', thing: 'hand-sink' } };
    case 'runs':
      return { tool: 'draw-run' };
    default:
      return null;
  }
}

const isColdStub = (input: Ask['input']) => typeof input !== 'string' && input.key === 'water-line/ask-cold-water-stub';
