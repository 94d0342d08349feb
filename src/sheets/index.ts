export * from './drawing';
