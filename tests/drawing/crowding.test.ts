import { describe, expect, it } from 'vitest';
import { type Box, drawDimensions, drawPlan, inkBoxes, overlaps, type Prim, type TextPrim, textBox } from '../../src/drawing';
import { boxAround } from '../../src/drawing/layout/box';
import { deriveScene } from '../../src/scene';
import { examplePlans } from '../support/examplePlans';

/** The scales of a whole example on screens from a tablet to a large one, the steps of the screen's paper scale, and of the usual papers. */
const SCALES = [...Array.from({ length: 7 }, (_, i) => 2 ** (5 + i / 4)), 24, 48, 50, 96];

const CASES = examplePlans().flatMap(({ name, plan }) => SCALES.map((unit) => ({ name, plan, unit, scale: `1:${Math.round(unit)}` })));

/** Air between figures and another chain's line, whose ticks reach 0.85 to its sides, paper mm. */
const AIR = 1.1;

describe.each(CASES)('$name at $scale', ({ plan, unit }) => {
  const scene = deriveScene(plan);
  const options = { units: plan.settings.units, scaleDenominator: unit };
  const spans = readSpans(drawDimensions(scene, options), unit);
  const openings = new Set(scene.room.openings.map(({ opening }) => opening.id));

  it('figures keep off the dimension lines of other chains', () => {
    const touched = spans.flatMap(({ text, box, line }, i) =>
      spans.flatMap((other, j) =>
        i !== j && !isInLine(line, other.line, unit) && overlaps(box, other.line, AIR * unit)
          ? [`${text} touches the line of ${other.text}`]
          : [],
      ),
    );
    expect(touched).toEqual([]);
  });

  it('what is said of hoods and runs keeps off dimension lines', () => {
    const notes = drawPlan(scene, options).filter((prim) => isText(prim) && (prim.layer === 'run' || prim.layer === 'above')) as TextPrim[];
    expect(notes.length).toBe(scene.hoods.length + scene.runs.length);
    const touched = notes.flatMap((note) =>
      spans
        .filter(({ line }) => overlaps(textBox(note, unit), line, 0.5 * unit))
        .map(({ text }) => `${note.text} touches the line of ${text}`),
    );
    expect(touched).toEqual([]);
  });

  it('figures keep off the leaves of doors', () => {
    const leaves = drawPlan(scene, options).filter(({ kind, subject = '' }) => kind === 'area' && openings.has(subject));
    const boxes = inkBoxes(leaves, unit);
    expect(spans.filter(({ box }) => boxes.some((leaf) => overlaps(box, leaf))).map(({ text }) => text)).toEqual([]);
  });
});

const isInLine = (a: Box, b: Box, unit: number) =>
  overlaps({ ...a, halfLength: 1e6 }, b, 0.1 * unit) && Math.abs(a.d.x * b.d.y - a.d.y * b.d.x) < 1e-3;

const isText = (prim: Prim): prim is TextPrim => prim.kind === 'text';

/** Each figure is drawn right after the two ticks of its span. */
function readSpans(drawing: readonly Prim[], unit: number): { text: string; box: Box; line: Box }[] {
  return drawing.flatMap((prim, i) => {
    if (!isText(prim)) return [];
    const [a, b] = drawing.slice(i - 2, i).flatMap((tick) => (tick.kind === 'symbol' && tick.shape === 'tick' ? [tick.at] : []));
    if (a === undefined || b === undefined) throw new Error(`${prim.text} stands at no span`);
    return [{ text: prim.text, box: textBox(prim, unit), line: boxAround(a, b, 0) }];
  });
}
