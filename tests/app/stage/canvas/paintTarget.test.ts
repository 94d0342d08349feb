import { describe, expect, test } from 'vitest';
import { paintSpot, paintTarget, type TargetContext } from '../../../../src/app/stage/canvas/paintTarget';
import type { ItemShape } from '../../../../src/editor';

const VIEW = { scale: 0.5, dx: 10, dy: 20 };
const COLOR = '#123456';

/** Writes down what is painted: the path of each fill or stroke, and the width of the stroke. */
function createContext() {
  const painted: { run: string; path: (string | number)[][]; width?: number; color: unknown }[] = [];
  let path: (string | number)[][] = [];
  const context: TargetContext = {
    strokeStyle: '',
    fillStyle: '',
    lineWidth: 1,
    lineJoin: 'miter',
    lineCap: 'butt',
    beginPath: () => void (path = []),
    moveTo: (x, y) => void path.push(['from', x, y]),
    lineTo: (x, y) => void path.push(['to', x, y]),
    closePath: () => void path.push(['close']),
    arc: (x, y, radius, from, to) => void path.push(['arc', x, y, radius, from, to]),
    fill: () => void painted.push({ run: 'fill', path, color: context.fillStyle }),
    stroke: () => void painted.push({ run: 'stroke', path, width: context.lineWidth, color: context.strokeStyle }),
  };
  return { context, painted };
}

const shape = (parts: Partial<ItemShape>): ItemShape => ({
  id: 'a',
  kind: 'thing',
  areas: [],
  lines: [],
  outlines: [],
  corners: [],
  reach: 0,
  least: 0,
  ...parts,
});

const corner = [
  { x: 0, y: 0 },
  { x: 100, y: 0 },
  { x: 100, y: 60 },
];

describe('where a press takes a thing', () => {
  test.each([
    {
      name: 'an area is filled',
      shape: shape({ areas: [corner] }),
      painted: [{ run: 'fill', path: [['from', 10, 20], ['to', 60, 20], ['to', 60, 50], ['close']], color: COLOR }],
    },
    {
      name: 'a line is as wide on each side as the pointer reaches',
      shape: shape({ lines: [{ points: corner, closed: false }], reach: 1 }),
      painted: [
        {
          run: 'stroke',
          path: [
            ['from', 10, 20],
            ['to', 60, 20],
            ['to', 60, 50],
          ],
          width: 12,
          color: COLOR,
        },
      ],
    },
    {
      name: 'an outline is closed, and its reach a share of the pointer’s',
      shape: shape({ lines: [{ points: corner, closed: true }], reach: 0.5 }),
      painted: [{ run: 'stroke', path: [['from', 10, 20], ['to', 60, 20], ['to', 60, 50], ['close']], width: 6, color: COLOR }],
    },
    {
      name: 'a duct is no narrower than it is',
      shape: shape({ lines: [{ points: corner.slice(0, 2), closed: false }], reach: 1, least: 50 }),
      painted: [
        {
          run: 'stroke',
          path: [
            ['from', 10, 20],
            ['to', 60, 20],
          ],
          width: 50,
          color: COLOR,
        },
      ],
    },
    {
      name: 'a point is round',
      shape: shape({ lines: [{ points: corner.slice(1, 2), closed: false }], reach: 1.5 }),
      painted: [{ run: 'fill', path: [['arc', 60, 20, 9, 0, 2 * Math.PI]], color: COLOR }],
    },
    { name: 'nothing of what has no shape', shape: shape({}), painted: [] },
  ])('$name', ({ shape: given, painted: expected }) => {
    const { context, painted } = createContext();
    paintTarget(context, given, VIEW, 6, COLOR);
    expect(painted).toEqual(expected);
  });

  test('lines have round ends, so that they are as near at an end as along them', () => {
    const { context } = createContext();
    paintTarget(context, shape({ lines: [{ points: corner, closed: false }], reach: 1 }), VIEW, 6, COLOR);
    expect([context.lineCap, context.lineJoin]).toEqual(['round', 'round']);
  });

  test('a handle is a spot', () => {
    const { context, painted } = createContext();
    paintSpot(context, { x: 3, y: 4 }, 7, COLOR);
    expect(painted).toEqual([{ run: 'fill', path: [['arc', 3, 4, 7, 0, 2 * Math.PI]], color: COLOR }]);
  });
});
