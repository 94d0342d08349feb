import { type EditorState, select } from '../../src/editor';
import { edit, type Plan, UNKNOWN_FLOOR_WASTE } from '../../src/plan';
import { Driver } from './driver';
import { straightPlan, withThing } from './plans';

/** A plan with one of everything. */
export const fullPlan = edit(withThing(straightPlan('direct-vent')), 'all', (draft) => {
  draft.hoods.push({
    id: 'hood-1',
    x: 6000,
    y: 3000,
    rotationDeg: 0,
    width: 1000,
    depth: 900,
    lipHeight: 2000,
    height: 600,
    exhaust: null,
    cavityAir: null,
  });
  draft.room.openings.push({
    id: 'door-1',
    kind: 'door',
    wall: 'wall-3',
    from: 1000,
    width: 914,
    height: 2032,
    sill: 0,
    swing: 'out',
    hinge: 'start',
  });
  draft.room.columns.push({ id: 'column-1', x: 7000, y: 4000, width: 300, depth: 200, rotationDeg: 0 });
  draft.room.floorDrains.push({ id: 'drain-1', kind: 'floor-drain', x: 5000, y: 3000, size: 204, waste: UNKNOWN_FLOOR_WASTE });
  draft.room.stubs.push({ id: 'stub-1', kind: 'power', x: 100, y: 110, z: 1200 });
}).plan;
/** An editor with these things chosen, and one of their handles. */
export const chosen = (ids: string[], of: Plan = fullPlan, handle: string | null = null): EditorState => ({
  ...select(new Driver(of).state, ids),
  handle,
});

export const labels = ({ history }: { history: { past: readonly { label: string }[] } }) => history.past.map(({ label }) => label);

export const present = ({ history }: { history: { present: Plan } }) => history.present;
