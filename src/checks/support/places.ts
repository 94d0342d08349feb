import type { Point, Polygon, Segment } from '../../geometry';
import type { Place } from '../types';

/** A spot on the plan; a height that comes with it is left out. */
export const pointPlace = ({ x, y }: Point): Place => ({ kind: 'point', point: { x, y } });

/** A stretch on the plan. */
export const segmentPlace = ({ a, b }: Segment): Place => ({ kind: 'segment', segment: { a, b } });

/** One or more areas on the plan. */
export const areaPlace = (...polygons: Polygon[]): Place => ({ kind: 'area', polygons });
