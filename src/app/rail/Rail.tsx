import { FetchedPart, NO_PROPS } from '../parts/FetchedPart';
import { type AppState, update, useApp } from '../store/store';
import { useFormat, usePanelWork } from '../store/work';
import { Ledger } from './Ledger';

const TABS: readonly { id: AppState['tab']; name: string }[] = [
  { id: 'card', name: 'Card' },
  { id: 'list', name: 'Everything on the plan' },
];

/** The rail: the card of what is chosen (or the list of everything), and the ledger under it. */
export function Rail() {
  const tab = useApp((s) => s.tab);
  const chosen = useApp((s) => s.finding);
  const { scene, findings } = usePanelWork();
  const format = useFormat();
  return (
    <aside className="rail">
      <div className="tabs" role="tablist" aria-label="Card or list">
        {TABS.map(({ id, name }) => (
          <button
            key={id}
            type="button"
            role="tab"
            id={`tab-${id}`}
            aria-selected={tab === id}
            aria-controls="rail-pane"
            onClick={() => update({ tab: id })}
          >
            {name}
          </button>
        ))}
      </div>
      <div className="card" role="tabpanel" id="rail-pane" aria-labelledby={`tab-${tab}`} tabIndex={-1}>
        <FetchedPart fetch={fetchRailPane} close={nothing} props={NO_PROPS} />
      </div>
      <Ledger scene={scene} findings={findings} format={format} chosen={chosen} />
    </aside>
  );
}

/** Cards bring all fields and their words along; the canvas does without them at first. */
export const fetchRailPane = async () => (await import('./RailPane')).RailPane;

const nothing = () => {};
