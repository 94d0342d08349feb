import { useApp } from '../store/store';
import { Card } from './Card';
import { ItemList } from './ItemList';

/** What the chosen tab of the rail shows: the card of what is chosen, or the list of everything. */
export const RailPane = () => (useApp((s) => s.tab) === 'card' ? <Card /> : <ItemList />);
