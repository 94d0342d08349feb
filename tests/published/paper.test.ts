import { describe, expect, it } from 'vitest';
import { placeDrawing } from '../../src/drawing';
import { createPlan } from '../../src/plan';
import { renderSvg } from '../../src/render';
import { runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { drawPlanSheet, PAPERS, type PaperName, parseScale, scaleWords, usualScales } from '../../src/sheets';
import { measureScaleBar } from '../../src/sheets/blocks/northAndScale';
import { CHECKS } from '../../src/topics/registry';

const POINT = 25.4 / 72;
const points = (mm: number) => mm / POINT;

/** Sizes of paper in points, lying. Sources: ISO 216 sizes; ASME Y14.1 and US practice in inches, 72 points each. */
describe('paper sizes', () => {
  // source: ISO 216, sizes of the A series, in points · read · 1e-4 pt
  it.each([
    ['a4', 841.8898, 595.2756],
    ['a3', 1190.5512, 841.8898],
    ['a2', 1683.7795, 1190.5512],
    ['a1', 2383.937, 1683.7795],
  ] as [PaperName, number, number][])('%s (ISO 216)', (paper, width, height) => {
    expect(points(PAPERS[paper].widthMm)).toBeCloseTo(width, 4);
    expect(points(PAPERS[paper].heightMm)).toBeCloseTo(height, 4);
  });

  // source: ASME Y14.1 and US practice, sizes in inches · read · exact
  it.each([
    ['ansi-a', 792, 612],
    ['ansi-b', 1224, 792],
    ['ansi-c', 1584, 1224],
    ['ansi-d', 2448, 1584],
    ['arch-a', 864, 648],
    ['arch-b', 1296, 864],
    ['arch-c', 1728, 1296],
    ['arch-d', 2592, 1728],
  ] as [PaperName, number, number][])('%s', (paper, width, height) => {
    expect(points(PAPERS[paper].widthMm)).toBeCloseTo(width, 9);
    expect(points(PAPERS[paper].heightMm)).toBeCloseTo(height, 9);
  });
});

// regression: length on the room and on paper, by arithmetic · computed · 1e-5 pt
describe('true scale', () => {
  const onPaper = (mm: number, denominator: number) => {
    const [line] = placeDrawing(
      [
        {
          kind: 'line',
          layer: 'room',
          points: [
            { x: 100, y: 50 },
            { x: 100 + mm, y: 50 },
          ],
        },
      ],
      1 / denominator,
      7,
      9,
    );
    const [a, b] = line?.kind === 'line' ? line.points : [];
    return (b?.x ?? Number.NaN) - (a?.x ?? 0);
  };

  it.each([
    ['1 ft at 1:48', 304.8, 48, 18],
    ['1 ft at 1:24', 304.8, 24, 36],
    ['1 ft at 1:32', 304.8, 32, 27],
    ['12 ft 6 in at 1:48', 3810, 48, 225],
    ['1 m at 1:50', 1000, 50, 56.692_913],
    ['a rack of 20 in at 1:48', 508, 48, 30],
    ['a rack of 20 in at 1:24', 508, 24, 60],
  ])('%s', (_, mm, denominator, expected) => expect(points(onPaper(mm, denominator))).toBeCloseTo(expected, 5));

  it('ARCH D at 1:48 covers 43891.2 × 29260.8 mm', () => {
    expect(PAPERS['arch-d'].widthMm * 48).toBeCloseTo(43_891.2, 9);
    expect(PAPERS['arch-d'].heightMm * 48).toBeCloseTo(29_260.8, 9);
  });

  it('a unit of the SVG is a millimetre of paper', () => {
    const scene = deriveScene(createPlan());
    const svg = renderSvg(drawPlanSheet(scene, runChecks(scene, CHECKS), { paper: 'arch-d', scale: 'fit', units: 'us' }));
    expect(svg).toMatch(/<svg [^>]*width="914\.4mm" height="609\.6mm" viewBox="0 0 914\.4 609\.6"/);
  });
});

// regression: a bar of 100 mm is 283.4646 points, one of 4 in 288 · computed · 1e-4 pt
describe('the check bar', () => {
  it.each([20, 50, 100, 200])('metric, 1:%i: 100 mm', (n) =>
    expect(points(measureScaleBar(n, 'metric').lengthMm)).toBeCloseTo(283.4646, 4),
  );
  it.each([12, 24, 48, 96])('US, 1:%i: 4 in', (n) => expect(points(measureScaleBar(n, 'us').lengthMm)).toBeCloseTo(288, 9));
  it.each([16, 32, 64, 192])('US, 1:%i: whole feet, no longer than 4 in', (n) => {
    const { lengthMm, step, steps } = measureScaleBar(n, 'us');
    expect(lengthMm).toBeLessThanOrEqual(101.6 + 1e-9);
    expect(lengthMm).toBeGreaterThan(80);
    expect(step * steps * 304.8).toBeCloseTo(lengthMm * n, 9);
  });

  it('the bar on the sheet is that long', () => {
    const scene = deriveScene(createPlan());
    const sheet = drawPlanSheet(scene, [], { paper: 'a3', scale: 50, units: 'metric' });
    const bars = sheet.drawing.flatMap((prim) => (prim.kind === 'area' && prim.layer === 'notes' ? [prim.rings[0] ?? []] : []));
    const fifths = bars.filter(
      (ring) => Math.abs((ring[1]?.x ?? 0) - (ring[0]?.x ?? 0) - 20) < 1e-9 && Math.abs((ring[2]?.y ?? 0) - (ring[1]?.y ?? 0) - 1.6) < 1e-9,
    );
    expect(fifths).toHaveLength(5);
  });
});

// memory: ISO 5455:1979, and by arithmetic · memory
describe('scales', () => {
  it('metric: reductions of ISO 5455', () => expect(usualScales('metric')).toEqual([10, 20, 50, 100, 200, 500, 1000]));
  it.each([
    ['⅛″ = 1′ 0″', 96],
    ['³⁄₁₆″ = 1′ 0″', 64],
    ['¼″ = 1′ 0″', 48],
    ['⅜″ = 1′ 0″', 32],
    ['½″ = 1′ 0″', 24],
    ['¾″ = 1′ 0″', 16],
    ['1″ = 1′ 0″', 12],
    ['1 ½″ = 1′ 0″', 8],
    ['3″ = 1′ 0″', 4],
  ])('%s', (words, n) => expect(scaleWords(n, 'us')).toBe(`${words} (1 : ${n})`));

  it.each([
    ['1:50', 50],
    ['1 : 48', 48],
    ['24', 24],
    ['1:0', null],
    ['2:1', null],
    ['', null],
    ['big', null],
  ])('typed %j', (text, n) => expect(parseScale(text)).toBe(n));
});
