import type { Fault } from './faults';

/** Faults of the work itself, on any line: more ware than it keeps up with, in racks light enough to be lifted so often. */
export const CAPACITY_FAULTS: readonly Fault[] = [
  {
    name: '400 meals in an hour',
    change: ({ demand }) => void Object.assign(demand, { peakMeals: 400, mealsPerDay: 450, rackMass: 6.8 }),
    expect: ['stop peak-kept:machine', 'watch backlog-fits:machine'],
  },
  {
    name: 'as much ware as the machine just washes',
    families: ['recirculating-hot-water'],
    change: ({ demand }) => void Object.assign(demand, { peakMeals: 190, rackMass: 6.8 }),
    expect: ['watch peak-kept:machine', 'watch backlog-fits:machine'],
  },
  {
    name: 'nobody knows how many come in the peak',
    change: ({ demand }) => void (demand.peakMeals = null),
    expect: ['ask peak-kept:machine', 'ask backlog-fits:machine', 'ask rack-lift:machine:clean-shelving'],
  },
];
