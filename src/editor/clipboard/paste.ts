import type { Point } from '../../geometry';
import { createId, duplicateItems, moveItems, type Plan, type Recipe } from '../../plan';
import { change } from '../commands/moveSelection';
import { select } from '../commands/select';
import { startOf } from '../snap/box';
import type { EditorState } from '../types';
import type { Clip } from './clip';

/** Each copy lands so far right of and below the last, mm. */
const BESIDE = 305;

/** Puts what was copied beside where it was, and chooses it. */
export function pasteClip(state: EditorState): EditorState {
  const { clipboard } = state;
  if (clipboard === null) return state;
  const pasted = clipboard.pasted + 1;
  const after = change(state, 'Paste', pasteRecipe(clipboard, { x: BESIDE * pasted, y: BESIDE * pasted }));
  if (after.history === state.history) return after;
  return { ...select(after, newIds(state.history.present, after.history.present)), clipboard: { ...clipboard, pasted } };
}

/** Doubles what is chosen beside itself, and chooses the copy. */
export function duplicateSelection(state: EditorState): EditorState {
  if (state.selection.length === 0) return state;
  const after = change(state, 'Duplicate', duplicateItems(state.selection, { x: BESIDE, y: BESIDE }));
  return after.history === state.history ? after : select(after, newIds(state.history.present, after.history.present));
}

/** What a plan has that the one before had not; fittings come with their table. */
function newIds(before: Plan, after: Plan): string[] {
  const known = new Set(everything(before));
  return everything(after).filter((id) => !known.has(id));
}

function everything({ room, machines, tables, things, hoods, runs }: Plan): string[] {
  const { openings, columns, floorDrains, stubs } = room;
  return [machines, tables, things, hoods, runs, openings, columns, floorDrains, stubs].flat().map(({ id }) => id);
}

/** Adds copies with new ids. A table joined to a copied machine is joined to the copy, another is free where it stood. */
function pasteRecipe(clip: Clip, by: Point): Recipe {
  return (draft) => {
    const fresh = new Map<string, string>();
    const named = <T extends { id: string }>(item: T): T => {
      const id = createId(draft, item.id.replace(/-\d+$/, ''));
      fresh.set(item.id, id);
      return { ...item, id };
    };
    for (const sheet of clip.sheets) if (!draft.sheets.some(({ id }) => id === sheet.id)) draft.sheets.push(sheet);
    for (const machine of clip.machines) draft.machines.push(named(machine));
    for (const table of clip.tables) pasteTable(draft, clip, table, named, fresh);
    for (const thing of clip.things) draft.things.push(named(thing));
    for (const hood of clip.hoods) draft.hoods.push(named(hood));
    for (const column of clip.columns) draft.room.columns.push(named(column));
    for (const drain of clip.floorDrains) draft.room.floorDrains.push(named(drain));
    for (const stub of clip.stubs) draft.room.stubs.push(named(stub));
    const loose = clip.runs.flatMap((run) => pasteRun(draft, run, named, fresh));
    // Runs of copied machines move with them.
    moveItems([...[...fresh.values()].filter((id) => !draft.runs.some((run) => run.id === id)), ...loose], by)(draft);
    for (const opening of clip.openings) pasteOpening(draft, opening, named);
  };
}

function pasteTable(
  draft: Plan,
  clip: Clip,
  table: Plan['tables'][number],
  named: <T extends { id: string }>(item: T) => T,
  fresh: Map<string, string>,
) {
  const machine = table.place.kind === 'joined' ? fresh.get(table.place.machine) : undefined;
  const { x, y, headingDeg } = startOf(clip.source, table);
  const place =
    table.place.kind === 'joined' && machine !== undefined ? { ...table.place, machine } : { kind: 'free' as const, x, y, headingDeg };
  draft.tables.push({ ...named(table), place, fittings: [] });
  for (const fitting of table.fittings) draft.tables.at(-1)?.fittings.push(named(fitting));
}

/** A run begins at the copy of its machine, else at its machine where that is still there; else it can't be pasted. */
function pasteRun(
  draft: Plan,
  run: Plan['runs'][number],
  named: <T extends { id: string }>(item: T) => T,
  fresh: Map<string, string>,
): string[] {
  const copied = fresh.get(run.machine);
  const machine = copied ?? run.machine;
  if (!draft.machines.some(({ id }) => id === machine)) return [];
  const made = { ...named(run), machine, points: run.points.map((point) => ({ ...point })) };
  draft.runs.push(made);
  return copied === undefined ? [made.id] : [];
}

/** An opening goes beside itself on its wall, as far as there is room; without its wall it stays away. */
function pasteOpening(draft: Plan, opening: Plan['room']['openings'][number], named: <T extends { id: string }>(item: T) => T): void {
  const outline = draft.room.outline;
  const index = outline.findIndex(({ id }) => id === opening.wall);
  const [a, b] = [outline[index], outline[(index + 1) % outline.length]];
  if (a === undefined || b === undefined) return;
  const last = Math.hypot(b.x - a.x, b.y - a.y) - opening.width;
  const beside = opening.from + opening.width;
  draft.room.openings.push({ ...named(opening), from: Math.max(0, beside <= last ? beside : opening.from - opening.width) });
}
