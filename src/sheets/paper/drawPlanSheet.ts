import type { Finding } from '../../checks';
import type { Scene } from '../../scene';
import { type Formatter, formatterFor, type Units } from '../../units';
import { drawDimensions } from '../dimensions/drawDimensions';
import { type Drawing, type Prim, placeDrawing } from '../drawing';
import { drawElevation } from '../elevation/drawElevation';
import { drawFindings } from '../plan/drawFindings';
import { drawPlan } from '../plan/drawPlan';
import { LETTER, WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { type Area, frameOf } from './area';
import { stackBlocks } from './block';
import { createCautionBlock } from './blocks/cautionBlock';
import { createFindingsBlock } from './blocks/findingsBlock';
import { createLegendBlock } from './blocks/legendBlock';
import { drawNorth, drawScaleBar, NORTH_SIZE, SCALE_BAR } from './blocks/northAndScale';
import { createScheduleBlock } from './blocks/scheduleBlock';
import { drawTitleBlock, TITLE_HEIGHT, TITLE_WIDTH } from './blocks/titleBlock';
import { type FittedDrawing, fitDrawing } from './fitDrawing';
import { PAPERS, type PaperName } from './papers';
import { scaleWords, usualScales } from './scales';
import type { Sheet } from './sheet';

export interface SheetOptions {
  paper: PaperName;
  /** The n of 1 : n, or the largest usual scale at which the plan fits. */
  scale: number | 'fit';
  units: Units;
}

/** Scales smaller than any usual one, for a room that would not fit otherwise. */
const LAST_RESORT = [1000, 2000, 5000, 10_000, 50_000];
/** Smaller than this the unrolled line tells nothing. */
const SMALLEST_ELEVATION = 100;
const GAP = 5;

/**
 * The dimensioned plan on one sheet, in true scale: plan, unrolled line where it finds room, equipment, findings, legend,
 * caution, scale bar, north and title block. A scale that was asked for and does not fit gives way to the largest
 * that does: compare `scaleDenominator`.
 */
export function drawPlanSheet(scene: Scene, findings: readonly Finding[], options: SheetOptions): Sheet {
  const paper = PAPERS[options.paper];
  const f = formatterFor(options.units);
  const layout = layOut(frameOf(paper.widthMm, paper.heightMm));
  const elevation = layout.hasElevation ? fitElevation(scene, options.units, layout.plan) : null;
  const planArea = elevation === null ? layout.plan : { ...layout.plan, height: layout.plan.height - elevation.height - GAP };
  const plan = fitPlan(scene, findings, options, planArea);
  const scaleText = scaleWords(plan.scaleDenominator, options.units);
  const place: Place = { scene, findings, f, layout, scaleText };
  return {
    title: [scene.plan.title.project, scene.plan.room.name].filter((part) => part !== '').join(', ') || 'Plan',
    widthMm: paper.widthMm,
    heightMm: paper.heightMm,
    scaleDenominator: plan.scaleDenominator,
    scaleText,
    drawing: [
      ...drawFrame(layout),
      ...centre(plan, planArea),
      ...(elevation === null ? [] : drawElevationBand(elevation, layout.plan)),
      ...drawColumn(place),
      ...drawFoot(place, plan.scaleDenominator),
      ...drawTitleBlock(fieldsOf(place, paper.name), layout.title.x, layout.title.y),
    ],
  };
}

interface Place {
  scene: Scene;
  findings: readonly Finding[];
  f: Formatter;
  layout: Layout;
  scaleText: string;
}

/** Where each part of a sheet lies. */
interface Layout {
  frame: Area;
  plan: Area;
  column: Area;
  /** Scale bar and north. */
  foot: Area;
  title: Area;
  /** The column is as wide as the title block and holds the legend; on small papers it is narrow, and the legend stands beside the title. */
  isWide: boolean;
  hasElevation: boolean;
}

function layOut(frame: Area): Layout {
  const right = frame.x + frame.width;
  const bottom = frame.y + frame.height;
  const title = { x: right - TITLE_WIDTH, y: bottom - TITLE_HEIGHT, width: TITLE_WIDTH, height: TITLE_HEIGHT };
  const isWide = frame.width >= 360;
  const columnWidth = isWide ? TITLE_WIDTH - 2 * GAP : 84;
  const columnX = right - columnWidth - GAP;
  const footHeight = isWide ? NORTH_SIZE : SCALE_BAR.height;
  const column = { x: columnX, y: frame.y + GAP, width: columnWidth, height: title.y - frame.y - 2 * GAP - (isWide ? footHeight : 0) };
  const plan = {
    x: frame.x + GAP,
    y: frame.y + GAP,
    width: columnX - frame.x - 3 * GAP,
    height: (isWide ? bottom : title.y - footHeight) - frame.y - 2 * GAP,
  };
  const foot = isWide
    ? { x: columnX, y: title.y - footHeight - 2, width: columnWidth, height: footHeight }
    : { x: frame.x + GAP, y: title.y - footHeight - 2, width: plan.width, height: footHeight };
  return { frame, plan, column, foot, title, isWide, hasElevation: isWide };
}

function fitPlan(scene: Scene, findings: readonly Finding[], { scale, units }: SheetOptions, area: Area): FittedDrawing {
  const open = findings.filter(({ verdict }) => verdict !== 'clear');
  const draw = (scaleDenominator: number): Drawing => {
    const options = { units, scaleDenominator };
    return [...drawPlan(scene, options), ...drawDimensions(scene, options), ...drawFindings(scene, open, options)];
  };
  const asked = scale === 'fit' ? [] : [scale];
  const found = fitDrawing(draw, [...asked, ...usualScales(units), ...LAST_RESORT], area.width, area.height);
  return found ?? { drawing: [], scaleDenominator: 1, bounds: { minX: 0, minY: 0, maxX: 0, maxY: 0 } };
}

interface FittedElevation extends FittedDrawing {
  /** Of the band that it takes with its heading, paper mm. */
  height: number;
  heading: string;
}

const HEADING = 7;

/** The unrolled line of the first machine, in no more than two fifths of the plan's height. */
function fitElevation(scene: Scene, units: Units, area: Area): FittedElevation | null {
  const line = scene.lines[0];
  if (line === undefined) return null;
  const { id } = line.machine.machine;
  const scales = usualScales(units).filter((n) => n >= 20 && n <= SMALLEST_ELEVATION);
  const fitted = fitDrawing(
    (scaleDenominator) => drawElevation(scene, id, { units, scaleDenominator }),
    scales,
    area.width,
    area.height * 0.4 - HEADING,
  );
  if (fitted === null) return null;
  const { bounds, scaleDenominator } = fitted;
  const name = scene.lines.length > 1 ? ` of machine ${scene.marks[id] ?? id}` : '';
  return {
    ...fitted,
    height: (bounds.maxY - bounds.minY) / scaleDenominator + HEADING,
    heading: `The line${name}, unrolled, ${scaleWords(scaleDenominator, units)}`,
  };
}

function drawElevationBand(elevation: FittedElevation, area: Area): Prim[] {
  const pen = createPen('notes');
  const y = area.y + area.height - elevation.height;
  return [
    pen.line(
      [
        { x: area.x, y: y - GAP / 2 },
        { x: area.x + area.width, y: y - GAP / 2 },
      ],
      { stroke: 'hairline', width: WIDTH.medium },
    ),
    pen.text({ x: area.x, y: y + 3.2 }, elevation.heading, LETTER.heading * 0.86, { weight: 'semibold' }),
    ...centre(elevation, { ...area, y: y + HEADING, height: elevation.height - HEADING }),
  ];
}

/** A fitted drawing in the middle of an area. */
function centre({ drawing, scaleDenominator, bounds }: FittedDrawing, area: Area): Prim[] {
  const middle = (low: number, high: number) => (low + high) / 2 / scaleDenominator;
  const dx = area.x + area.width / 2 - middle(bounds.minX, bounds.maxX);
  const dy = area.y + area.height / 2 - middle(bounds.minY, bounds.maxY);
  return placeDrawing(drawing, 1 / scaleDenominator, dx, dy);
}

function drawFrame({ frame, column, title }: Layout): Prim[] {
  const pen = createPen('notes');
  const { x, y, width, height } = frame;
  const ring = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  const rule = column.x - GAP;
  return [
    pen.area(ring, { stroke: 'ink', width: WIDTH.bold, pattern: 'none' }),
    pen.line(
      [
        { x: rule, y },
        { x: rule, y: title.y },
      ],
      { stroke: 'ink', width: WIDTH.narrow },
    ),
  ];
}

/** Equipment, findings and, where there is room, legend and caution. Equipment and findings share what the others leave. */
function drawColumn({ scene, findings, f, layout }: Place): Prim[] {
  const { column, isWide } = layout;
  const caution = createCautionBlock(f, column.width);
  const legend = isWide ? createLegendBlock(scene, column.width) : null;
  const free = column.height - caution.height - (legend?.height ?? 0) - 3 * GAP;
  const first = createScheduleBlock(scene, f, column.width, free * 0.55);
  const list = createFindingsBlock(findings, f, column.width, free - first.height);
  const schedule = createScheduleBlock(scene, f, column.width, free - list.height);
  return [...stackBlocks([schedule, list, ...(legend === null ? [] : [legend]), caution], column, GAP)];
}

/** Scale bar and north; on small papers the legend, to the left of the title. */
function drawFoot({ scene, f, layout, scaleText }: Place, scaleDenominator: number): Prim[] {
  const { foot, frame, title, isWide } = layout;
  const legendArea = { x: frame.x + GAP, y: title.y + 2, width: title.x - frame.x - 2 * GAP, height: TITLE_HEIGHT - 3 };
  const legend = isWide ? [] : stackBlocks([createLegendBlock(scene, legendArea.width)], legendArea, 0);
  const north = { x: foot.x + foot.width - NORTH_SIZE / 2 + (isWide ? 2 : 0), y: foot.y + foot.height / 2 + 1 };
  return [
    ...drawScaleBar(scaleDenominator, f, scaleText, foot.x, foot.y + (isWide ? 5 : 1)),
    ...drawNorth(scene.plan.room.northDeg, north.x, north.y),
    ...legend,
  ];
}

function fieldsOf({ scene, scaleText }: Place, paper: string) {
  const { title, room } = scene.plan;
  const project = title.project === '' ? 'No project named' : title.project;
  return {
    owner: project,
    title: [room.name, title.alternative].filter((part) => part !== '').join(', '),
    documentType: 'Plan of the dish line',
    creator: title.drawnBy,
    approval: '',
    number: title.number,
    revision: title.revision,
    date: title.date,
    sheet: '1 of 1',
    scale: scaleText,
    paper,
  };
}
