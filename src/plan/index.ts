export * from './planSchema';
