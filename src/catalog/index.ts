export * from './dataSheet';
export * from './families';
export * from './fields';
export * from './needsHood';
