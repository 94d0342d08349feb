export * from './fields';
export * from './machineSheet';
