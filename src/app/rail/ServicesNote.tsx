import { fetchServicesAgain } from '../store/fetchServices';
import { useApp } from '../store/store';

/** Says that not all checks are here yet, or can't be fetched and how to try again; nothing once they are here. */
export function ServicesNote() {
  const services = useApp((s) => s.services);
  if (services === 'here') return null;
  if (services !== 'refused')
    return (
      <p className="services" role="status">
        {services === 'coming' ? 'The checks are coming.' : 'More checks are coming: air, water, heat, drain, power, people.'}
      </p>
    );
  return (
    <div className="services" data-refused="true" role="alert">
      <p>
        Not all checks can be fetched, so nothing is said of air, water, heat, drain, power and people. See that the page’s server can be
        reached.
      </p>
      <button type="button" className="press" onClick={() => void fetchServicesAgain()}>
        Try again
      </button>
    </div>
  );
}
