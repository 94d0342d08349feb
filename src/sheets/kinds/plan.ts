import { createPen, type Prim, placeDrawing, WIDTH } from '../../drawing';
import type { Finding } from '../../rules';
import type { Scene } from '../../scene';
import { type Formatter, formatterFor } from '../../units';
import type { Area } from '../area';
import { type Block, drawHeading, HEADING_HEIGHT, placeBeside, stackBlocks } from '../block';
import { createAirBalanceBlock } from '../blocks/airBalanceBlock';
import { createCautionBlock } from '../blocks/cautionBlock';
import { type Checked, createFindingsBlock } from '../blocks/findingsBlock';
import { createLegendBlock } from '../blocks/legendBlock';
import { drawNorth, drawScaleBar, NORTH_SIZE } from '../blocks/northAndScale';
import { createRoomDataBlock } from '../blocks/roomDataBlock';
import { createScheduleBlock } from '../blocks/scheduleBlock';
import { drawTitleBlock, TITLE_HEIGHT, type TitleFields } from '../blocks/titleBlock';
import type { FittedDrawing } from '../fitDrawing';
import { type FittedSheet, fitSheet } from '../fitSheet';
import { GAP, layOut, type SheetLayout } from '../layOut';
import { PAPERS } from '../papers';
import { scaleWords } from '../scales';
import type { Sheet, SheetKind, SheetOptions, SheetPlace } from '../sheet';

export const kind: SheetKind = { id: 'plan', order: 10, draw: drawPlan };

/**
 * The dimensioned plan on one sheet, in true scale: plan, unrolled line where it finds room, equipment, findings, legend,
 * caution, scale bar, north and title block. A scale that was asked for and does not fit gives way to the largest
 * that does: compare `scaleDenominator`.
 */
function drawPlan(
  scene: Scene,
  findings: readonly Finding[],
  { paper, scale, units, isPartlyChecked = false }: SheetOptions,
  place: SheetPlace,
): Sheet {
  const { name, widthMm, heightMm } = PAPERS[paper];
  const f = formatterFor(units);
  const layout = layOut(PAPERS[paper]);
  const blocks = createBlocks(scene, { findings, isPartlyChecked }, f, layout);
  const fitted = fitSheet(scene, findings, units, scale === 'fit' ? null : scale, { plan: layout.plan, rest: restOf(layout, blocks) });
  const { scaleDenominator } = fitted.plan;
  const scaleText = scaleWords(scaleDenominator, units);
  return {
    title: [scene.plan.title.project, scene.plan.room.name].filter((part) => part !== '').join(', ') || 'Plan',
    widthMm,
    heightMm,
    scaleDenominator,
    scaleText,
    drawing: [
      ...drawFrame(layout),
      ...centre(fitted.plan, fitted.planArea),
      ...drawUnrolled(scene, f, fitted),
      ...stackBlocks(blocks, layout.column, GAP),
      ...drawFoot(scene, f, layout, scaleDenominator, scaleText),
      ...drawTitleBlock(fieldsOf(scene, scaleText, name, place), layout.title.x, layout.title.y),
    ],
  };
}

/** Equipment, findings, on wide sheets air, room and legend, and the caution. Equipment and findings share what the others leave. */
function createBlocks(scene: Scene, checked: Checked, f: Formatter, layout: SheetLayout): Block[] {
  const { column, isWide } = layout;
  const caution = createCautionBlock(f, column.width, isWide || scene.machines.length === 0 ? '' : LEFT_OUT);
  const fixed = isWide ? [createSiteBlock(scene, f, column.width), createLegendBlock(scene, column.width)].filter(isFilled) : [];
  const free = column.height - heightOf([...fixed, caution]) - GAP;
  const first = createScheduleBlock(scene, f, column.width, free * 0.55);
  const list = createFindingsBlock(checked, f, column.width, free - first.height);
  const schedule = createScheduleBlock(scene, f, column.width, free - list.height);
  return [schedule, list, ...fixed, caution];
}

const LEFT_OUT = 'Legend, air and room data in full: on wider paper.';

const isFilled = ({ height }: Block) => height > 0;

/** Part of the column that figures take beside words. */
const BALANCE_WIDTH = 0.36;

/** The room's data, beside its air balance where there is air to balance. */
function createSiteBlock(scene: Scene, f: Formatter, width: number): Block {
  const narrow = BALANCE_WIDTH * width;
  const balance = createAirBalanceBlock(scene, f, narrow);
  if (!isFilled(balance)) return createRoomDataBlock(scene, f, width);
  return placeBeside(balance, createRoomDataBlock(scene, f, width - narrow - GAP), narrow + GAP);
}

/** Height of blocks with a gap below each. */
const heightOf = (blocks: readonly Block[]) => blocks.reduce((sum, block) => sum + block.height + GAP, 0);

/** What the words leave of their column; nothing on small papers. */
function restOf({ column, isWide }: SheetLayout, blocks: readonly Block[]): Area {
  const used = heightOf(blocks);
  return { ...column, y: column.y + used, height: isWide ? column.height - used : 0 };
}

function drawUnrolled(scene: Scene, f: Formatter, { elevation, elevationArea: area }: FittedSheet): Prim[] {
  const line = scene.lines[0];
  if (elevation === null || line === undefined) return [];
  const { id } = line.machine.machine;
  const name = scene.lines.length > 1 ? ` of machine ${scene.marks[id] ?? id}` : '';
  const heading = `The line${name}, unrolled, as its operator sees it. ${scaleWords(elevation.scaleDenominator, f.units)}; fall drawn × 10`;
  const below = { ...area, y: area.y + HEADING_HEIGHT, height: area.height - HEADING_HEIGHT };
  return [...drawHeading(heading, area.x, area.y, area.width), ...centre(elevation, below)];
}

/** A fitted drawing in the middle of an area. */
function centre({ drawing, scaleDenominator, bounds }: FittedDrawing, area: Area): Prim[] {
  const middle = (low: number, high: number) => (low + high) / 2 / scaleDenominator;
  const dx = area.x + area.width / 2 - middle(bounds.minX, bounds.maxX);
  const dy = area.y + area.height / 2 - middle(bounds.minY, bounds.maxY);
  return placeDrawing(drawing, 1 / scaleDenominator, dx, dy);
}

function drawFrame({ frame, column, title }: SheetLayout): Prim[] {
  const pen = createPen('notes');
  const { x, y, width, height } = frame;
  const ring = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  const rule = column.x - GAP;
  const edge = [
    { x: rule, y },
    { x: rule, y: title.y },
  ];
  return [pen.area(ring, { stroke: 'ink', width: WIDTH.bold, pattern: 'none' }), pen.line(edge, { stroke: 'ink', width: WIDTH.narrow })];
}

/** Scale bar and north; on small papers the legend or the air balance, to the left of the title. */
function drawFoot(
  scene: Scene,
  f: Formatter,
  { foot, frame, title, isWide }: SheetLayout,
  scaleDenominator: number,
  scaleText: string,
): Prim[] {
  const cornerArea = { x: frame.x + GAP, y: title.y + 2, width: title.x - frame.x - 2 * GAP, height: TITLE_HEIGHT - 3 };
  const corner = isWide ? [] : stackBlocks(cornerBlocks(scene, f, cornerArea), cornerArea, 0);
  const north = { x: foot.x + foot.width - NORTH_SIZE / 2 + (isWide ? 2 : 0), y: foot.y + foot.height / 2 - (isWide ? 0 : 2) };
  return [
    ...drawScaleBar(scaleDenominator, f, scaleText, foot.x, foot.y + (isWide ? 5 : 1)),
    ...drawNorth(scene.plan.room.northDeg, north.x, north.y),
    ...corner,
  ];
}

/** The legend where there is room for it; where there is none the air balance, which takes less. */
function cornerBlocks(scene: Scene, f: Formatter, { width, height }: Area): Block[] {
  const legend = createLegendBlock(scene, width, true);
  return [legend.height <= height ? legend : createAirBalanceBlock(scene, f, width)];
}

function fieldsOf({ plan: { title, room } }: Scene, scale: string, paper: string, { number, of }: SheetPlace): TitleFields {
  return {
    owner: title.project === '' ? 'No project named' : title.project,
    title: [room.name, title.alternative].filter((part) => part !== '').join(', '),
    documentType: 'Plan of the dish line',
    creator: title.drawnBy,
    approval: '',
    number: title.number,
    revision: title.revision,
    date: title.date,
    sheet: `${number} of ${of}`,
    scale,
    paper,
  };
}
