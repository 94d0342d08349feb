import type { Recipe } from '../edit';
import type { Plan, Table } from '../planSchema';
import { tableLength } from '../problems/findLineProblems';

/** Adds a stretch at the far end of a table. Where the deck was surveyed, its new end is not known yet. */
export function addLeg(table: string, leg: Table['legs'][number]): Recipe {
  return onTable(table, (item) => {
    item.legs.push({ ...leg });
    if (item.deck.kind === 'heights') item.deck.heights.push(null);
  });
}

/** Takes a stretch out; the last one stays. Fittings that would hang over the end go back onto the table, or go. */
export function removeLeg(table: string, index: number): Recipe {
  return onTable(table, (item) => {
    if (item.legs.length < 2 || item.legs[index] === undefined) return;
    item.legs.splice(index, 1);
    const first = item.legs[0];
    if (first !== undefined) first.turnDeg = 0;
    if (item.deck.kind === 'heights') item.deck.heights.splice(index + 1, 1);
    keepFittings(item);
  });
}

/** Gives a stretch another length. Fittings that would hang over the end go back onto the table, or go. */
export function setLegLength(table: string, index: number, length: number): Recipe {
  return onTable(table, (item) => {
    const leg = item.legs[index];
    if (leg === undefined) return;
    leg.length = length;
    keepFittings(item);
  });
}

/** Describes the deck by its height at the joint, each turn and the end, as they are by its fall (null where it is not known). */
export function surveyDeck(table: string): Recipe {
  return onTable(table, (item) => {
    const { deck } = item;
    if (deck.kind === 'heights') return;
    item.deck = { kind: 'heights', heights: ends(item).map((s) => heightAt(deck, s)) };
  });
}

/** Describes the deck by its height at the joint and one fall, the mean of what was surveyed. */
export function slopeDeck(table: string): Recipe {
  return onTable(table, (item) => {
    const { deck } = item;
    if (deck.kind === 'fall') return;
    const first = deck.heights[0] ?? null;
    const last = deck.heights.at(-1) ?? null;
    const fall = first === null || last === null ? null : Math.max(-0.5, Math.min(0.5, (last - first) / tableLength(item)));
    item.deck = { kind: 'fall', jointHeight: first, fall };
  });
}

function onTable(id: string, change: (table: Table) => void): Recipe {
  return (draft: Plan) => {
    const table = draft.tables.find((item) => item.id === id);
    if (table !== undefined) change(table);
  };
}

/** Distances from the joint to itself, each turn and the end. */
function ends(table: Table): number[] {
  return table.legs.reduce<number[]>((list, leg) => [...list, (list.at(-1) ?? 0) + leg.length], [0]);
}

function heightAt(deck: Extract<Table['deck'], { kind: 'fall' }>, s: number): number | null {
  if (s === 0) return deck.jointHeight;
  return deck.jointHeight === null || deck.fall === null ? null : Math.max(0, deck.jointHeight + deck.fall * s);
}

function keepFittings(table: Table): void {
  const length = tableLength(table);
  for (let index = table.fittings.length - 1; index >= 0; index--) {
    const fitting = table.fittings[index];
    if (fitting === undefined) continue;
    if (fitting.length > length) table.fittings.splice(index, 1);
    else fitting.at = Math.max(fitting.length / 2, Math.min(fitting.at, length - fitting.length / 2));
  }
}
