import { Konva } from 'konva/lib/Global';
import { Group } from 'konva/lib/Group';
import { Layer } from 'konva/lib/Layer';
import { Shape } from 'konva/lib/Shape';
import { Stage } from 'konva/lib/Stage';
import type { Drawing, TextPrim } from '../../../drawing';
import { drawHandle, type Handle, type Hit, toScreen, type View, type Viewport } from '../../../editor';
import type { Point } from '../../../geometry';
import { renderCanvas } from '../../../render';
import { PX_PER_PAPER_MM } from '../screenScale';
import type { Shown } from './deriveShown';
import { isSameDrawing } from './drawnItem';
import { type Figure, figureCorners, figureOf } from './figureBox';
import { type ItemGroups, type ShapeMaker, syncGroups } from './itemGroups';
import { paintSpot, paintTarget } from './paintTarget';

/** What lies under a point of the canvas: a thing or a handle, or a number of a dimension. */
export type Picked = { readonly kind: 'hit'; readonly hit: Hit } | { readonly kind: 'figure'; readonly figure: Figure };

/** A fingertip on a handle covers more than on a line, since there is nothing else to aim at. */
const HANDLE_REACH = 1.3;

// Layers are drawn when they are told to, once a frame at most.
Konva.autoDrawEnabled = false;

/**
 * The paper as a tree of nodes: a stage with layers for the room, the items and what lies over them; in them one group a
 * thing with the thing's id, whose shape paints its part of the display list and is met by a press on its true outline.
 * A layer is painted only when something on it has changed; what is dragged moves to the upper layer meanwhile. The hit
 * graph is painted when it is next asked. Nodes stand in px of the canvas, as ink does not grow with the plan.
 */
export class PlanCanvas {
  private readonly stage: Stage;
  private readonly room = new Layer({ name: 'room' });
  private readonly items = new Layer({ name: 'items' });
  private readonly overlay = new Layer({ name: 'overlay' });
  private readonly things = new Group({ name: 'things' });
  private readonly notes = new Group({ name: 'notes' });
  private readonly figures = new Group({ name: 'figures' });
  private readonly moving = new Group({ name: 'moving', listening: false });
  private readonly handles = new Group({ name: 'handles' });
  private readonly dimensions = this.createPainting('dimensions');
  private readonly findings = this.createPainting('findings');
  private readonly motion = this.createPainting('motion');
  private readonly choice = this.createPainting('choice');
  private readonly groups: ItemGroups = new Map();
  private readonly noteGroups: ItemGroups = new Map();
  /** Layers whose hit graph is not that of what they show. */
  private readonly stale = new Set<Layer>();
  private shown: Shown | null = null;
  private handlesKey: string | null = null;
  private reachPx = 0;

  constructor(container: HTMLElement) {
    this.stage = new Stage({ container: container as HTMLDivElement, width: 1, height: 1 });
    this.items.add(this.things, this.notes, this.dimensions.shape, this.figures, this.findings.shape);
    this.overlay.add(this.moving, this.motion.shape, this.choice.shape, this.handles);
    this.stage.add(this.room, this.items, this.overlay);
  }

  destroy(): void {
    this.stage.destroy();
  }

  /** Paints what is not on the canvas yet. */
  show(shown: Shown): void {
    const changed =
      this.resize(shown.viewport) || this.isOtherView(shown) ? new Set([this.room, this.items, this.overlay]) : new Set<Layer>();
    const isOtherShape = this.shown?.shapes !== shown.shapes;
    this.shown = shown;
    for (const layer of this.syncItems(shown)) changed.add(layer);
    if (this.syncItemsDrawings(shown, changed)) changed.add(this.items);
    if (this.syncOverlay(shown)) changed.add(this.overlay);
    for (const layer of changed) layer.drawScene();
    for (const layer of isOtherShape ? [this.room, this.items, this.overlay] : changed) this.stale.add(layer);
  }

  /** Everything under a point, topmost first; `reachPx`: how near counts as on it. */
  pickAll(point: Point, reachPx: number): Picked[] {
    this.refreshHits(reachPx);
    const targets = this.stage.find<Shape>('.target').filter((shape) => shape.isListening() && shape.intersects(point));
    return targets.toReversed().flatMap((shape) => this.pickedOf(shape) ?? []);
  }

  /** What lies on top at a point. */
  pick(point: Point, reachPx: number): Picked | null {
    this.refreshHits(reachPx);
    const shape = this.stage.getIntersection(point);
    return shape instanceof Shape ? this.pickedOf(shape) : null;
  }

  private resize({ width, height }: Viewport): boolean {
    if (this.stage.width() === width && this.stage.height() === height) return false;
    this.shown = null;
    this.stage.size({ width, height });
    return true;
  }

  private isOtherView({ view, palette }: Shown): boolean {
    return this.shown?.view !== view || this.shown.palette !== palette;
  }

  private syncItems({ room, items, moving, notes }: Shown): Layer[] {
    const still = items.filter(({ key }) => !moving.has(key));
    const placed = [
      { container: this.room, items: room },
      { container: this.things, items: still },
      { container: this.moving, items: items.filter(({ key }) => moving.has(key)) },
    ];
    const changed = [
      ...syncGroups(this.groups, placed, this.maker),
      ...syncGroups(this.noteGroups, [{ container: this.notes, items: notes }], this.maker),
    ];
    return changed.flatMap((container) => container.getLayer() ?? []);
  }

  private syncItemsDrawings({ dimensions, findings, view }: Shown, changed: ReadonlySet<Layer>): boolean {
    const isNew = this.dimensions.take(dimensions);
    if (isNew || changed.has(this.items)) this.syncFigures(dimensions, view);
    return this.findings.take(findings) || isNew;
  }

  /** One place to press for each number that is a field of the plan. */
  private syncFigures(dimensions: Drawing, view: View): void {
    this.figures.destroyChildren();
    for (const prim of dimensions) if (prim.kind === 'text' && prim.edit !== undefined) this.figures.add(createFigure(prim, view));
  }

  private syncOverlay({ motion, choice, handles, chosenHandle, view }: Shown): boolean {
    const isNewMotion = this.motion.take(motion);
    const isNewChoice = this.choice.take(choice);
    const key = handles.length === 0 ? null : JSON.stringify([handles, chosenHandle, view]);
    const areNewHandles = key !== this.handlesKey;
    this.handlesKey = key;
    if (areNewHandles) {
      this.handles.destroyChildren();
      for (const handle of handles) this.handles.add(this.createHandle(handle, handle.id === chosenHandle, view));
    }
    return isNewMotion || isNewChoice || areNewHandles;
  }

  private refreshHits(reachPx: number): void {
    if (reachPx !== this.reachPx) for (const layer of [this.room, this.items, this.overlay]) this.stale.add(layer);
    this.reachPx = reachPx;
    for (const layer of this.stale) layer.drawHit();
    this.stale.clear();
  }

  private pickedOf(shape: Shape): Picked | null {
    const figure: Figure | undefined = shape.getAttr('figure');
    if (figure !== undefined) return { kind: 'figure', figure };
    const handle: Handle | undefined = shape.getAttr('handle');
    if (handle !== undefined) return { kind: 'hit', hit: { id: handle.subject, handle: handle.id } };
    const id = shape.id() || (shape.getParent()?.id() ?? '');
    return id === '' ? null : { kind: 'hit', hit: { id, handle: null } };
  }

  private readonly maker: ShapeMaker = {
    createShape: (read) =>
      new Shape({
        name: 'target',
        perfectDrawEnabled: false,
        sceneFunc: (context) => this.paint(context._context, read().prims),
        hitFunc: (context, shape) => this.paintTargetOf(read().id, context._context, shape),
      }),
    createPart: (id) => new Shape({ name: 'target', id, hitFunc: (context, shape) => this.paintTargetOf(id, context._context, shape) }),
  };

  private paintTargetOf(id: string | null, context: CanvasRenderingContext2D, { colorKey }: Shape): void {
    const target = id === null ? undefined : this.shown?.shapes.get(id);
    if (target && this.shown) paintTarget(context, target, this.shown.view, this.reachPx, colorKey);
  }

  private createHandle(handle: Handle, isChosen: boolean, view: View): Shape {
    const drawing = drawHandle(handle, isChosen);
    return new Shape({
      name: 'target',
      handle,
      ...toScreen(view, handle.point),
      perfectDrawEnabled: false,
      // Its own place is the origin here.
      sceneFunc: (context) => this.paint(context._context, drawing, { x: -handle.point.x * view.scale, y: -handle.point.y * view.scale }),
      hitFunc: (context, shape) => paintSpot(context._context, { x: 0, y: 0 }, this.reachPx * HANDLE_REACH, shape.colorKey),
    });
  }

  /** A display list as one shape that no press meets. */
  private createPainting(name: string): { shape: Shape; take: (drawing: Drawing) => boolean } {
    let now: Drawing = [];
    const shape = new Shape({
      name,
      listening: false,
      perfectDrawEnabled: false,
      sceneFunc: (context) => this.paint(context._context, now),
    });
    const take = (drawing: Drawing) => {
      const isNew = !isSameDrawing(now, drawing);
      now = drawing;
      return isNew;
    };
    return { shape, take };
  }

  private paint(context: CanvasRenderingContext2D, drawing: Drawing, origin?: Point): void {
    if (this.shown === null || drawing.length === 0) return;
    const { view, palette } = this.shown;
    const [dx, dy] = origin === undefined ? [view.dx, view.dy] : [origin.x, origin.y];
    const size = { width: this.stage.width(), height: this.stage.height() };
    renderCanvas(context, drawing, { scale: view.scale, dx, dy, pxPerPaperMm: PX_PER_PAPER_MM, palette, ...size });
  }
}

function createFigure(prim: TextPrim, view: View): Shape {
  const corners = figureCorners(prim, view);
  return new Shape({
    name: 'target',
    figure: figureOf(prim, view),
    hitFunc: ({ _context: context }, shape) => {
      context.fillStyle = shape.colorKey;
      context.beginPath();
      corners.forEach(({ x, y }, i) => (i === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
      context.fill();
    },
  });
}
