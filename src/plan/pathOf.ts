import type { Plan } from './planSchema';

type Path = (string | number)[];
type ListName = 'machines' | 'tables' | 'things' | 'hoods' | 'runs';

/** Path of a field in the plan, for what asks for an input: `['tables', 1, 'deck', 'fall']`. */
export function pathOf(plan: Plan, list: ListName, id: string, ...rest: Path): Path {
  return [list, plan[list].findIndex((item) => item.id === id), ...rest];
}
