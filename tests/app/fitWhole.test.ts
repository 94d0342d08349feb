import { describe, expect, it } from 'vitest';
import { PANELS } from '../../src/app/stage/panels';
import { deriveDenominator, PX_PER_PAPER_MM } from '../../src/app/stage/screenScale';
import { fitWhole } from '../../src/app/store/fitWhole';
import { drawDimensions, drawPlan, type TextPrim, textBox } from '../../src/drawing';
import { cornersOf } from '../../src/drawing/layout/box';
import { createEditor, toScreen } from '../../src/editor';
import { type Plan, transformPlan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { examplePlans } from '../support/examplePlans';

/** The canvas beside the rail in windows of 1440 × 900 and 1024 × 768, and with the drawer folded. */
const CANVASES = [
  { width: 1104, height: 592 },
  { width: 728, height: 468 },
  { width: 728, height: 636 },
];

const PLANS = examplePlans().flatMap(({ name, plan }) => [
  { name, plan },
  { name: `${name}, a quarter turned`, plan: transformPlan(plan, { rotateDeg: 90, mirror: false, move: { x: 0, y: 0 } }) },
  { name: `${name}, in a mirror`, plan: transformPlan(plan, { rotateDeg: 0, mirror: true, move: { x: 0, y: 0 } }) },
]);

describe.each(CANVASES)('the whole plan on $width × $height px', (viewport) => {
  it.each(PLANS)('$name: every text is in sight, and none lies under a panel', ({ plan }) => {
    const texts = placeTexts(plan, viewport);
    expect(texts.length).toBeGreaterThan(12);
    const panels = PANELS.mouse.map(({ left, right = 0, top, bottom = 0, width, height }) => {
      const [x, y] = [left ?? viewport.width - right - width, top ?? viewport.height - bottom - height];
      return { x: [x, x + width], y: [y, y + height] };
    });
    for (const { text, x, y } of texts) {
      expect.soft(x[0] > 0 && x[1] < viewport.width && y[0] > 0 && y[1] < viewport.height, `${text} is in sight`).toBe(true);
      const isCovered = panels.some((panel) => meet(panel.x, x) && meet(panel.y, y));
      expect.soft(isCovered, `${text} lies under a panel`).toBe(false);
    }
  });
});

type Range = [number, number];

const meet = ([a = 0, b = 0]: number[], [c, d]: Range) => a < d && c < b;

/** The texts of the drawing as they stand on the screen, px. */
function placeTexts(plan: Plan, viewport: { width: number; height: number }): { text: string; x: Range; y: Range }[] {
  const { view } = fitWhole(createEditor(plan, viewport));
  const scene = deriveScene(plan);
  const options = { units: plan.settings.units, scaleDenominator: deriveDenominator(view.scale) };
  const texts = [...drawPlan(scene, options), ...drawDimensions(scene, options)].filter((prim): prim is TextPrim => prim.kind === 'text');
  return texts.map((text) => {
    const corners = cornersOf(textBox(text, PX_PER_PAPER_MM / view.scale)).map((corner) => toScreen(view, corner));
    const range = (values: number[]): Range => [Math.min(...values), Math.max(...values)];
    return { text: text.text, x: range(corners.map(({ x }) => x)), y: range(corners.map(({ y }) => y)) };
  });
}
