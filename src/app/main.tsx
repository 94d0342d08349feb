import { createRoot } from 'react-dom/client';
import { App } from './App';
import { fetchUnrolledLine } from './drawer/Elevation';
import { prefetch } from './parts/FetchedPart';
import { fetchQuestions } from './rail/Ledger';
import { fetchRailPane } from './rail/Rail';
import { actions } from './store/actions';
import { restoreWork, startAutosave } from './store/autosave';
import { loadExample } from './store/examples';
import { fetchOwnChecks } from './store/fetchChecks';
import { readState } from './store/store';
import './styles/tokens.css';
import './styles/frame.css';
import './styles/strip.css';
import './styles/rail.css';
import './styles/ledger.css';
import './styles/stage.css';
import './styles/dialogs.css';
import './styles/start.css';

const FIRST_ROOM = 'school-corner';

/** Takes up the work that the browser kept; a first visit begins with an example room on the paper. */
async function begin(): Promise<void> {
  prefetch([fetchOwnChecks, fetchRailPane, fetchUnrolledLine, fetchQuestions]);
  const isRestored = restoreWork();
  // Texts are laid out on the canvas with the shipped typeface, so it should be there first; where it can't be
  // fetched, the browser's own serves, and the page must not stay blank for want of it.
  await Promise.allSettled([document.fonts.load('12px "IBM Plex Sans"'), document.fonts.load('600 12px "IBM Plex Sans"')]);
  if (!isRestored) {
    const message = readState().editor.message;
    const first = await loadExample(FIRST_ROOM);
    if (first.ok) actions.open(first.plan, null);
    if (message) actions.showMessage(message.tone, message.text);
  }
  startAutosave();
  createRoot(document.getElementById('root') as HTMLElement).render(<App />);
}

void begin();
