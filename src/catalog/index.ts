export * from './families';
export * from './fields';
export * from './machineSheet';
export * from './needsHood';
