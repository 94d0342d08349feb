export { pathOf } from '../../plan';
