import { fetchChecksAgain } from '../store/fetchChecks';
import { useApp } from '../store/store';

/** Says that not all checks are here yet, or can't be fetched and how to try again; nothing once they are here. */
export function ChecksNote() {
  const loadedChecks = useApp((s) => s.loadedChecks);
  if (loadedChecks === 'all') return null;
  if (loadedChecks !== 'failed')
    return (
      <p className="checks-note" role="status">
        {loadedChecks === 'none' ? 'The checks are coming.' : 'More checks are coming: air, water, heat, drain, power, people.'}
      </p>
    );
  return (
    <div className="checks-note" data-refused="true" role="alert">
      <p>
        Not all checks can be fetched, so nothing is said of air, water, heat, drain, power and people. See that the page’s server can be
        reached.
      </p>
      <button type="button" className="press" onClick={() => void fetchChecksAgain()}>
        Try again
      </button>
    </div>
  );
}
