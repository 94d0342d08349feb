import { actions } from '../../../src/app/store/actions';
import * as store from '../../../src/app/store/store';

const START = store.readState();

/** The page's store as at its start, with its actions. */
export function freshStore() {
  store.update(START);
  return { ...store, actions };
}
