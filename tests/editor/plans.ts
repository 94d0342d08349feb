import { createLinePlan, createPlan, type Plan } from '../../src/plan';

/** A room of 8 × 5 m with a straight line, the machine at (4000, 800). */
export function straightPlan(family = 'recirculating-hot-water'): Plan {
  const line = createLinePlan({ family, configuration: 'straight', hand: 'left-to-right', at: { x: 4000, y: 800 } });
  return {
    ...line,
    room: { ...line.room, outline: rectangleRoom(8000, 5000), openings: [], columns: [], floorDrains: [], stubs: [] },
    things: [],
  };
}

export function cornerPlan(family = 'recirculating-hot-water'): Plan {
  const line = createLinePlan({ family, configuration: 'left-front', hand: 'left-to-right', at: { x: 5000, y: 800 } });
  return {
    ...line,
    room: { ...line.room, outline: rectangleRoom(8000, 5000), openings: [], columns: [], floorDrains: [], stubs: [] },
    things: [],
  };
}

/** An empty room of 8 × 5 m with one door in the lower wall. */
export function emptyPlan(): Plan {
  const plan = createPlan();
  const door = {
    id: 'door-1',
    kind: 'door',
    wall: 'wall-3',
    from: 1000,
    width: 914,
    height: 2032,
    sill: 0,
    swing: 'out',
    hinge: 'start',
  } as const;
  return { ...plan, room: { ...plan.room, outline: rectangleRoom(8000, 5000), openings: [door] } };
}

export function withThing(plan: Plan, thing: Partial<Plan['things'][number]> = {}): Plan {
  return {
    ...plan,
    things: [
      ...plan.things,
      {
        id: 'cart-1',
        kind: 'cart',
        name: '',
        x: 2000,
        y: 3500,
        rotationDeg: 0,
        width: 800,
        depth: 500,
        height: 900,
        ware: 'none',
        clearBelow: null,
        sealed: null,
        basins: null,
        ...thing,
      },
    ],
  };
}

const rectangleRoom = (width: number, depth: number) => [
  { id: 'wall-1', x: 0, y: 0 },
  { id: 'wall-2', x: width, y: 0 },
  { id: 'wall-3', x: width, y: depth },
  { id: 'wall-4', x: 0, y: depth },
];
