import type { Water } from '../../src/scene';

/** A deck and where its water goes. */
export interface Row {
  name: string;
  /** Places along the table and deck heights. */
  profile: [s: number, z: number][];
  sinks?: [from: number, to: number][];
  /** from, to, slope, where it runs. */
  stretches: [number, number, number, Water['stretches'][number]['runsTo']][];
  /** from, to, lowest, depth. */
  pools: [number, number, number, number][];
  leastSlope: number;
}

/** All by hand: heights over lengths, and similar triangles for the shores. */
export const ROWS: Row[] = [
  {
    name: 'falls to the joint: 1 in 100',
    profile: [
      [0, 864],
      [2000, 884],
    ],
    stretches: [[0, 2000, 0.01, 'joint']],
    pools: [],
    leastSlope: 0.01,
  },
  {
    name: 'a turn without a break of slope is one stretch',
    profile: [
      [0, 864],
      [500, 869],
      [2000, 884],
    ],
    stretches: [[0, 2000, 0.01, 'joint']],
    pools: [],
    leastSlope: 0.01,
  },
  {
    name: 'falls away: stands behind the end rim as deep as the joint is high above it',
    profile: [
      [0, 864],
      [2000, 844],
    ],
    stretches: [[0, 2000, -0.01, 'stands']],
    pools: [[0, 2000, 2000, 20]],
    leastSlope: -0.01,
  },
  {
    name: 'falls away steeply: the 75 mm rim limits the depth',
    profile: [
      [0, 864],
      [2000, 664],
    ],
    stretches: [[0, 2000, -0.1, 'stands']],
    pools: [[1250, 2000, 2000, 75]],
    leastSlope: -0.1,
  },
  {
    name: 'level',
    profile: [
      [0, 864],
      [1500, 864],
    ],
    stretches: [[0, 1500, 0, 'stands']],
    pools: [[0, 1500, 750, 0]],
    leastSlope: 0,
  },
  {
    name: 'level at the joint, falling beyond: the water above runs onto the level part and stands',
    profile: [
      [0, 864],
      [600, 864],
      [1600, 884],
    ],
    stretches: [
      [0, 600, 0, 'stands'],
      [600, 1600, 0.02, 'stands'],
    ],
    pools: [[0, 600, 300, 0]],
    leastSlope: 0,
  },
  {
    name: 'level at the far end',
    profile: [
      [0, 864],
      [1000, 884],
      [1600, 884],
    ],
    stretches: [
      [0, 1000, 0.02, 'joint'],
      [1000, 1600, 0, 'stands'],
    ],
    pools: [[1000, 1600, 1300, 0]],
    leastSlope: 0,
  },
  {
    name: 'low spot at a turn: 10 below the joint, shores at 0 and where the far leg is as high again',
    profile: [
      [0, 864],
      [1000, 854],
      [2000, 874],
    ],
    stretches: [
      [0, 1000, -0.01, 'stands'],
      [1000, 2000, 0.02, 'stands'],
    ],
    pools: [[0, 1500, 1000, 10]],
    leastSlope: -0.01,
  },
  {
    name: 'low spot behind a hump: fills to the hump',
    profile: [
      [0, 864],
      [500, 872],
      [1000, 866],
      [1500, 884],
    ],
    stretches: [
      [0, 500, 0.016, 'joint'],
      [500, 1000, -0.012, 'stands'],
      [1000, 1500, 0.036, 'stands'],
    ],
    pools: [[500, 1000 + (6 / 18) * 500, 1000, 6]],
    leastSlope: -0.012,
  },
  {
    name: 'two low spots under one level are one pool',
    profile: [
      [0, 870],
      [400, 860],
      [800, 864],
      [1200, 862],
      [1600, 880],
    ],
    stretches: [
      [0, 400, -0.025, 'stands'],
      [400, 800, 0.01, 'stands'],
      [800, 1200, -0.005, 'stands'],
      [1200, 1600, 0.045, 'stands'],
    ],
    pools: [[0, 1200 + (8 / 18) * 400, 400, 10]],
    leastSlope: -0.025,
  },
  {
    name: 'two pools, kept apart by a hump higher than the joint',
    profile: [
      [0, 864],
      [400, 860],
      [800, 868],
      [1200, 865],
      [1600, 880],
    ],
    stretches: [
      [0, 400, -0.01, 'stands'],
      [400, 800, 0.02, 'stands'],
      [800, 1200, -0.0075, 'stands'],
      [1200, 1600, 0.0375, 'stands'],
    ],
    pools: [
      [0, 600, 400, 4],
      [800, 1200 + (3 / 15) * 400, 1200, 3],
    ],
    leastSlope: -0.01,
  },
  {
    name: 'sink in the middle of one fall: the far part runs into it',
    profile: [
      [0, 864],
      [2400, 888],
    ],
    sinks: [[1000, 1500]],
    stretches: [
      [0, 1000, 0.01, 'joint'],
      [1500, 2400, 0.01, 'sink'],
    ],
    pools: [],
    leastSlope: 0.01,
  },
  {
    name: 'sink in the middle, deck falls away from the machine into it: good',
    profile: [
      [0, 864],
      [1000, 854],
      [1500, 854],
      [2400, 872],
    ],
    sinks: [[1000, 1500]],
    stretches: [
      [0, 1000, -0.01, 'sink'],
      [1500, 2400, 0.02, 'sink'],
    ],
    pools: [],
    leastSlope: 0.01,
  },
  {
    name: 'beyond the sink it falls away to the far end',
    profile: [
      [0, 864],
      [1000, 874],
      [1500, 874],
      [2400, 865],
    ],
    sinks: [[1000, 1500]],
    stretches: [
      [0, 1000, 0.01, 'joint'],
      [1500, 2400, -0.01, 'stands'],
    ],
    pools: [[1500, 2400, 2400, 9]],
    leastSlope: -0.01,
  },
  {
    name: 'between two sinks either way is good; a sink at the far end drains it',
    profile: [
      [0, 864],
      [600, 870],
      [1000, 870],
      [1400, 866],
      [1800, 866],
    ],
    sinks: [
      [1400, 1900],
      [600, 1000],
    ],
    stretches: [
      [0, 600, 0.01, 'joint'],
      [1000, 1400, -0.01, 'sink'],
    ],
    pools: [],
    leastSlope: 0.01,
  },
  {
    name: 'a low spot between two sinks stands',
    profile: [
      [0, 864],
      [600, 870],
      [1000, 870],
      [1200, 866],
      [1400, 868],
      [1800, 868],
      [2000, 872],
    ],
    sinks: [
      [600, 1000],
      [1400, 1800],
    ],
    stretches: [
      [0, 600, 0.01, 'joint'],
      [1000, 1200, -0.02, 'stands'],
      [1200, 1400, 0.01, 'stands'],
      [1800, 2000, 0.02, 'sink'],
    ],
    pools: [[1100, 1400, 1200, 2]],
    leastSlope: -0.02,
  },
  {
    name: 'a ridge between joint and sink sheds both ways',
    profile: [
      [0, 864],
      [500, 874],
      [1000, 864],
      [1400, 864],
    ],
    sinks: [[1000, 1400]],
    stretches: [
      [0, 500, 0.02, 'joint'],
      [500, 1000, -0.02, 'sink'],
    ],
    pools: [],
    leastSlope: 0.02,
  },
  {
    name: 'a sink beyond the far end is no drain',
    profile: [
      [0, 864],
      [1000, 854],
    ],
    sinks: [[1000, 1400]],
    stretches: [[0, 1000, -0.01, 'stands']],
    pools: [[0, 1000, 1000, 10]],
    leastSlope: -0.01,
  },
  {
    name: 'sinks take all of it',
    profile: [
      [0, 864],
      [500, 864],
    ],
    sinks: [[-20, 600]],
    stretches: [],
    pools: [],
    leastSlope: Infinity,
  },
];
