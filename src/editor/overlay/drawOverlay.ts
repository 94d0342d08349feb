import type { Drawing, Hue, Prim } from '../../drawing';
import { along, angleOf, distance, type Point, sub } from '../../geometry';
import type { Scene } from '../../scene';
import { formatterFor } from '../../units';
import type { Handle } from '../hit/handle';
import { handlesFor } from '../hit/handlesFor';
import { shapesOf } from '../hit/shapesOf';
import type { EditorState, Guide, Readout } from '../types';

/** Least distance on the screen that gets a number, px: shorter ones would hide what they measure. */
const LEAST_READOUT_PX = 14;

/** What is chosen, what lies under the pointer, guides, live dimensions and handles, from the same vocabulary as the plan. */
export const drawOverlay = (state: EditorState, scene: Scene): Drawing => [
  ...drawChoice(state, scene),
  ...handlesShown(state, scene).flatMap((handle) => drawHandle(handle, handle.id === state.handle)),
];

/** The handles that the canvas shows: those of the one chosen thing, while nothing is dragged and no frame is drawn. */
export function handlesShown({ selection, preview, view, tool }: EditorState, scene: Scene): Handle[] {
  const [only] = selection;
  if (only === undefined || selection.length > 1 || preview !== null || tool.tool !== 'select' || tool.name === 'boxing') return [];
  return handlesFor(scene, only, view.scale);
}

/** All of the overlay but its handles. */
export function drawChoice(state: EditorState, scene: Scene): Drawing {
  const { selection, hover, preview } = state;
  return [
    ...(hover !== null && !selection.includes(hover) ? outline(scene, hover, false) : []),
    ...selection.flatMap((id) => outline(scene, id, true)),
    ...(preview?.guides ?? []).flatMap(drawGuide),
    ...(preview?.readouts ?? []).flatMap((readout) => drawReadout(readout, state)),
    ...(preview?.box ? [frame(preview.box.from, preview.box.to)] : []),
  ];
}

/** Chosen: a double outline. Under the pointer: one thin line. */
function outline(scene: Scene, id: string, isChosen: boolean): Prim[] {
  const paths = shapesOf(scene).get(id)?.outlines ?? [];
  const line = (width: number, stroke: Hue) =>
    paths.map(({ points, closed }): Prim => ({ kind: 'line', layer: 'notes', points, closed, stroke, width }));
  return isChosen ? [...line(1.1, 'chosen'), ...line(0.5, 'paper')] : line(0.35, 'chosen');
}

function drawGuide({ kind, from, to }: Guide): Prim[] {
  const line: Prim = {
    kind: 'line',
    layer: 'notes',
    points: [from, to],
    stroke: 'chosen',
    width: kind === 'joint' ? 1 : 0.25,
    dash: kind === 'joint' ? 'solid' : 'long',
  };
  const dot = (at: Point): Prim => ({ kind: 'symbol', layer: 'notes', at, shape: 'dot', size: 1.2, fill: 'chosen' });
  if (distance(from, to) < 1) return [dot(from)];
  return kind === 'joint' ? [line] : [line, dot(from), dot(to)];
}

/** A thin line between ticks, with its number upright to the reader and a knock-out behind it. */
function drawReadout({ kind, from, to, value }: Readout, { view, history }: EditorState): Prim[] {
  const f = formatterFor(history.present.settings.units);
  const text = kind === 'angle' ? f.angle(value) : f.length(value);
  const line: Prim = { kind: 'line', layer: 'notes', points: [from, to], stroke: 'chosen', width: 0.25 };
  if (distance(from, to) * view.scale < LEAST_READOUT_PX) return [line];
  const at = kind === 'angle' ? to : along(from, sub(to, from), 0.5);
  const angleDeg = kind === 'angle' ? 0 : readable(angleOf(sub(to, from)));
  const tick = (point: Point): Prim => ({
    kind: 'symbol',
    layer: 'notes',
    at: point,
    shape: 'tick',
    size: 1.6,
    stroke: 'chosen',
    width: 0.35,
    angleDeg,
  });
  const label: Prim = {
    kind: 'text',
    layer: 'notes',
    at,
    text,
    size: 3,
    angleDeg,
    anchor: 'middle',
    baseline: 'middle',
    hue: 'chosen',
    weight: 'semibold',
    halo: true,
  };
  return kind === 'angle' ? [line, label] : [line, tick(from), tick(to), label];
}

/** A text reads from below or, upright, from the right: from −90° up to, not including, 90°. */
function readable(deg: number): number {
  if (deg >= 90 && deg < 270) return deg - 180;
  return deg >= 270 ? deg - 360 : deg;
}

/** A small square or ring, filled where it is the chosen one. */
export function drawHandle({ point, shape }: Handle, isChosen: boolean): Drawing {
  const ink = { stroke: 'chosen', fill: isChosen ? 'chosen' : 'paper', width: 0.4 } as const;
  return [{ kind: 'symbol', layer: 'notes', at: point, shape: shape === 'square' ? 'square' : 'ring', size: 2.4, ...ink }];
}

function frame(a: Point, b: Point): Prim {
  const ring = [a, { x: b.x, y: a.y }, b, { x: a.x, y: b.y }];
  return { kind: 'area', layer: 'notes', rings: [ring], stroke: 'chosen', width: 0.25, dash: 'short', fill: 'chosen', fillOpacity: 0.06 };
}
