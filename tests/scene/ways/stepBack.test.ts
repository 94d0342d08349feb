import { expect, test } from 'vitest';
import { createBody, type Polygon } from '../../../src/geometry';
import { stepBack } from '../../../src/scene/ways/stepBack';
import { MOTIONS } from '../../support/motions';
import { at, box, type Corner, HALL, lineOf, type Move, roomOf } from '../hall';
import { near } from '../plans';

interface Row {
  name: string;
  room?: readonly Corner[];
  obstacles?: readonly Polygon[];
  /** Corner of the inside, and the ways out of the sides that make it. */
  corner?: Corner;
  normals?: readonly Corner[] | null;
  stand?: Corner;
  width?: number;
  /** Something is just as far off as it must be: when it is turned, rounding decides. */
  isExact?: boolean;
  to: Corner;
}

/** The line stands along y = 1000 and looks down the paper; it is a body as deep as that. */
const LINE_BODY = box(0, 0, 6000, 1000);
/** Twice as deep as the hall. */
const DEEP: readonly Corner[] = [
  [0, 0],
  [6000, 0],
  [6000, 8000],
  [0, 8000],
];

// Steps of 75 from (3000, 1000): 1075, 1150, … 2500. A person of 700 needs 350 − 2 about the place and the way to it.
const ROWS: Row[] = [
  { name: 'no inside: the standing place', normals: null, to: [3000, 1400] },
  // Clearances: 1975 from above at 1975 (4000 − 1975 = 2025 from below), 1950 from below at 2050.
  { name: 'the middle of an empty hall, as far as the steps go', to: [3000, 1975] },
  { name: 'no farther than 1500, however deep the room', room: DEEP, to: [3000, 2500] },
  // Between 1000 and 2000: 450 at 1450, 475 at 1525, 400 at 1600.
  { name: 'the middle of an aisle of 1000', obstacles: [LINE_BODY, box(2000, 2000, 4000, 2200)], to: [3000, 1525] },
  // 350 at 1450 and 375 at 1375; behind the shelf 690 at 2500, but the way there leads through it.
  { name: 'not beyond what stands in the way', obstacles: [LINE_BODY, box(2000, 1800, 4000, 1810)], stand: [3000, 1350], to: [3000, 1375] },
  // 300 is the most between 1000 and 1600, less than the 348 that a person needs.
  {
    name: 'an aisle too narrow for a person: the standing place',
    obstacles: [LINE_BODY, box(2000, 1600, 4000, 8000)],
    stand: [2000, 1300],
    to: [2000, 1300],
  },
  // At 1375 clearances of 375 and 321 (to 1696): at 1300 it is 300. The best is 348 at 1348, between the steps.
  {
    name: 'no step falls on the place: 347.9 at 1375',
    obstacles: [LINE_BODY, box(2000, 1722.9, 4000, 8000)],
    stand: [3000, 1360],
    to: [3000, 1360],
  },
  {
    name: 'a step falls on the place: 348.1 at 1375',
    obstacles: [LINE_BODY, box(2000, 1723.1, 4000, 8000)],
    stand: [3000, 1360],
    to: [3000, 1375],
  },
  // Between side walls 1000 apart it is 500 from 1525 on: the first of equals.
  {
    name: 'of places that are equally roomy the first',
    obstacles: [LINE_BODY, box(0, 1000, 2500, 8000), box(3500, 1000, 6000, 8000)],
    room: DEEP,
    to: [3000, 1525],
  },
  // The way from (3000, 1350) to anywhere below 1700 passes between two posts.
  {
    name: 'between two posts that leave 348 on either side of the way',
    obstacles: [LINE_BODY, box(2552, 1700, 2652, 1800), box(3348, 1700, 3448, 1800)],
    stand: [3000, 1350],
    isExact: true,
    to: [3000, 2500],
  },
  // From the posts' corners hypot(347.9, 325) = 476 at 1375, where the line is 375 away; 428.4 at 1450, 389.4 at 1525.
  {
    name: 'not between two posts that leave 347.9: before them, 428.4 at 1450',
    obstacles: [LINE_BODY, box(2552.1, 1700, 2652.1, 1800), box(3347.9, 1700, 3447.9, 1800)],
    stand: [3000, 1350],
    to: [3000, 1450],
  },
  // Diagonally from (3000, 1000) to the lower left, 53.033 each way a step: after n steps 1000 + 53.033 n from above and 3000 − 53.033 n
  // from the left wall and from below. After 18 it is 1954.6, after 19 1992.4, after 20 1939.3.
  {
    name: 'a corner: half way between its two sides',
    normals: [
      [-1, 0],
      [0, 1],
    ],
    stand: [2600, 1400],
    to: [1992.373, 2007.627],
  },
  // A wide person: 1000 about, so 998 is needed; between 1000 and 3100 there are 1025 at 2025 (1075 below).
  {
    name: 'a wider person needs more',
    obstacles: [LINE_BODY, box(0, 3100, 6000, 3200)],
    stand: [3000, 2010],
    width: 2000,
    to: [3000, 2050],
  },
  {
    name: 'a wider person finds none: 997 at most',
    obstacles: [LINE_BODY, box(0, 2994, 6000, 3200)],
    stand: [2500, 1997],
    width: 2000,
    to: [2500, 1997],
  },
];

const stepIn = (
  { room = HALL, obstacles = [], corner = [3000, 1000], normals = [[0, 1]], stand = [3000, 1400], width = 700 }: Row,
  move: Move,
) => {
  const [origin, turned] = [move(at(0, 0)), (p: Corner) => move(at(...p))];
  const directions = normals?.map((n) => ({ x: turned(n).x - origin.x, y: turned(n).y - origin.y }));
  const inside = directions === undefined ? null : { corner: turned(corner), normals: directions };
  const centre = turned(stand);
  return stepBack(
    { room: roomOf(room, [], move) },
    lineOf({ inside }),
    { centre, width, reach: 0 },
    obstacles.map((body) => createBody(body.map(move))),
  );
};

test.each(ROWS)('a step back: $name', (row) => {
  for (const { name, move } of row.isExact ? MOTIONS.slice(0, 1) : MOTIONS) {
    const [found, wanted] = [stepIn(row, move), move(at(...row.to))];
    expect([name, Math.hypot(found.x - wanted.x, found.y - wanted.y)]).toEqual([name, near(0, 2)]);
  }
});
