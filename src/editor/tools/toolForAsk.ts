import type { FieldPath } from '../../plan';
import type { ToolChoice } from './toolState';

/** The tool that puts what is asked for on the paper, where a question asks for no value but for a thing that is not drawn yet. */
export function toolForAsk({ input, path }: { input: string; path: FieldPath }): ToolChoice | null {
  switch (path.join('.')) {
    case 'room.openings':
      return { tool: 'add-opening', kind: 'door' };
    case 'room.floorDrains':
      return { tool: 'add-thing', add: { kind: 'floor-drain', drain: 'floor-drain' } };
    case 'room.stubs':
      return { tool: 'add-thing', add: { kind: 'stub', stub: input.startsWith('cold') ? 'cold-water' : 'hot-water' } };
    case 'things':
      return { tool: 'add-thing', add: { kind: 'thing', thing: 'hand-sink' } };
    case 'runs':
      return { tool: 'draw-run' };
    default:
      return null;
  }
}
