import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import type { Prim } from '../../src/drawing';
import { NIGHT, renderSvg } from '../../src/render';
import { el, escapeXml } from '../../src/render/svg/el';
import { runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { drawPlanSheet, type Sheet } from '../../src/sheets';
import { CHECKS } from '../../src/topics/registry';
import { examplePlan, examplePlans } from '../support/examplePlans';

const sheetOf = (drawing: Prim[]): Sheet => ({
  title: 'Test',
  widthMm: 50,
  heightMm: 40,
  scaleDenominator: 1,
  scaleText: '1 : 1',
  drawing,
});

/** A strict XML parser (that of the rasteriser): it throws on anything that is not well-formed. */
const parse = (svg: string) => new Resvg(svg, { font: { loadSystemFonts: false } });

describe('SVG', () => {
  it.each(examplePlans())('$name is well-formed and as large as its paper', ({ plan }) => {
    const scene = deriveScene(plan);
    const svg = renderSvg(drawPlanSheet(scene, runChecks(scene, CHECKS), { paper: 'a3', scale: 'fit', units: 'metric' }));
    const picture = parse(svg);
    expect(picture.width).toBeCloseTo((420 / 25.4) * 96, 0);
    expect(picture.height).toBeCloseTo((297 / 25.4) * 96, 0);
    expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
  });

  it('the parser refuses what is not well-formed', () => {
    expect(() => parse('<svg xmlns="http://www.w3.org/2000/svg" width="1" height="1"><g></svg>')).toThrow(/expected 'g' tag/);
  });

  it.each([
    ['markup', '<script>alert("1 & 2")</script>'],
    ['quotes', `6' 4 1/2" & more`],
    ['control characters', 'a\u0000b\u0007c\u001f'],
    ['lone surrogates', 'a\ud800b\udc00c'],
    ['whole surrogates and letters from everywhere', 'Spülküche łódź 厨房 😀'],
    ['an end of a comment and of CDATA', ']]> -->'],
  ])('people may write %s', (_, text) => {
    const svg = renderSvg(sheetOf([{ kind: 'text', layer: 'notes', at: { x: 1, y: 5 }, text, size: 3, subject: text, edit: [text] }]));
    expect(() => parse(svg)).not.toThrow();
    expect(svg).not.toContain('<script>');
  });

  it('escapes once', () => {
    expect(escapeXml('a & b < "c"')).toBe('a &amp; b &lt; &quot;c&quot;');
    expect(el('g', { 'data-x': '<', n: 1 / 3, z: -0.0001, none: undefined })).toBe('<g data-x="&lt;" n="0.333" z="0"/>');
  });

  it('a number that can be typed into names its field and its thing', () => {
    const svg = renderSvg(
      sheetOf([
        { kind: 'text', layer: 'dimensions', at: { x: 1, y: 5 }, text: '7′', size: 3, subject: 'table-1', edit: ['tables', 0, 'depth'] },
      ]),
    );
    expect(svg).toContain('data-subject="table-1"');
    expect(svg).toContain('data-edit="tables.0.depth"');
  });

  it('layers can be left out; the order stays back to front', () => {
    const prims: Prim[] = (['room', 'equipment', 'room'] as const).map((layer, i) => ({
      kind: 'symbol',
      layer,
      at: { x: i, y: 1 },
      shape: 'dot',
      size: 1,
      fill: 'ink',
    }));
    const layers = (svg: string) => [...svg.matchAll(/data-layer="(\w+)"/g)].map((match) => match[1]);
    expect(layers(renderSvg(sheetOf(prims)))).toEqual(['room', 'equipment', 'room']);
    expect(layers(renderSvg(sheetOf(prims), { hiddenLayers: new Set(['room']) }))).toEqual(['equipment']);
  });

  it('has a night paper', () => {
    const scene = deriveScene(examplePlan('school-corner'));
    const svg = renderSvg(drawPlanSheet(scene, [], { paper: 'a3', scale: 'fit', units: 'us' }), { palette: NIGHT });
    expect(svg).toContain(`fill="${NIGHT.paper}"`);
  });
});
