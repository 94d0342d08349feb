// A module of its own, so that it can be fetched by itself.
export { CHECKS } from '../../checks';
