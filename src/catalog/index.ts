export * from './families/index';
export * from './fields';
export * from './machineSheet';
export * from './needsHood';
