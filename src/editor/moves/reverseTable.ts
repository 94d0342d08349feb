import { normalizeDeg } from '../../geometry';
import { type Table, tableLength } from '../../plan';
import { nodesOf } from '../snap/box';

/** The same free table, walked from its other end: it covers the same floor. A joined table stays as it is. */
export function reverseTable(table: Table): Table {
  const { place } = table;
  if (place.kind === 'joined') return table;
  const nodes = nodesOf(table, place);
  const end = nodes.at(-1);
  if (end === undefined) return table;
  const whole = tableLength(table);
  return {
    ...table,
    place: { kind: 'free', x: end.point.x, y: end.point.y, headingDeg: normalizeDeg(end.headingDeg + 180) },
    legs: reverseLegs(table.legs),
    operatorSide: table.operatorSide === 'left' ? 'right' : 'left',
    deck: reverseDeck(table.deck, whole),
    fittings: table.fittings.map((fitting) => ({ ...fitting, at: whole - fitting.at })),
  };
}

/** A turn that was made to the right going out is made to the left coming back. */
function reverseLegs(legs: Table['legs']): Table['legs'] {
  return legs.toReversed().map(({ length }, index) => {
    const turnBefore = index === 0 ? 0 : (legs[legs.length - index]?.turnDeg ?? 0);
    return { length, turnDeg: 0 - turnBefore };
  });
}

function reverseDeck(deck: Table['deck'], whole: number): Table['deck'] {
  if (deck.kind === 'heights') return { kind: 'heights', heights: deck.heights.toReversed() };
  const { jointHeight, fall } = deck;
  const isKnown = jointHeight !== null && fall !== null;
  return { kind: 'fall', jointHeight: isKnown ? Math.max(0, jointHeight + fall * whole) : null, fall: fall === null ? null : 0 - fall };
}
