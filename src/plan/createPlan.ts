import { PLAN_FORMAT, PLAN_VERSION, type Plan, type Settings } from './planSchema';
import { STRICTEST, UNKNOWN_AIR, UNKNOWN_FINISH, UNKNOWN_PIPES, UNKNOWN_TARIFF } from './siteSchema';

/** A valid plan with an empty, sensible room of 16 × 12 ft, 10 ft high, and one door; nothing is known that nobody said. */
export function createPlan(): Plan {
  return {
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    title: { project: '', alternative: '', number: '', revision: '', drawnBy: '', date: '' },
    room: {
      name: 'Dish room',
      outline: [
        { id: 'wall-1', x: 0, y: 0 },
        { id: 'wall-2', x: 4876.8, y: 0 },
        { id: 'wall-3', x: 4876.8, y: 3657.6 },
        { id: 'wall-4', x: 0, y: 3657.6 },
      ],
      ceilingHeight: 3048,
      northDeg: 0,
      openings: [
        { id: 'door-1', kind: 'door', wall: 'wall-3', from: 304.8, width: 914.4, height: 2032, sill: 0, swing: 'out', hinge: 'start' },
      ],
      columns: [],
      floorDrains: [],
      stubs: [],
    },
    machines: [],
    tables: [],
    things: [],
    hoods: [],
    runs: [],
    demand: {
      mealsPerDay: null,
      peakMeals: null,
      peakMinutes: null,
      piecesPerMeal: null,
      piecesPerRack: null,
      hoursPerDay: null,
      daysPerYear: null,
      rackMass: null,
      restMinutes: null,
      scrapSeconds: null,
    },
    supply: { hotWaterC: null, coldWaterC: null, flowPressureKpa: null, voltage: null, phase: null, toGroundV: null },
    order: { reference: '', configuration: null, hand: null, voltage: null, phase: null, vent: null, clearOpening: null },
    air: UNKNOWN_AIR,
    finish: UNKNOWN_FINISH,
    pipes: UNKNOWN_PIPES,
    tariff: UNKNOWN_TARIFF,
    codes: STRICTEST,
    settings: createSettings(),
    sheets: [],
  };
}

function createSettings(): Settings {
  return {
    units: 'us',
    // A rack is 20 in square. Its place on a table is 20 or 20½ in, as the maker of the table says.
    rackSize: 508,
    rackPitch: 508,
    // 28 in, the least exit access: 29 CFR 1910.36(g)(2). A wider working aisle is the user's choice.
    aisleWidth: 914.4,
    personWidth: 711.2,
    // Room for about three racks before and after the machine: common practice.
    racksBefore: 3,
    racksAfter: 3,
  };
}
