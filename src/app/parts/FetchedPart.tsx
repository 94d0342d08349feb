import { type ComponentType, useEffect, useState } from 'react';
import { actions } from '../store/actions';

/** Fetches a part of the page that the canvas can do without. */
export type FetchPart<P extends object = object> = () => Promise<ComponentType<P>>;

/** For a part that is given nothing. */
export const NO_PROPS = {};

const fetched = new Map<unknown, unknown>();

interface Props<P extends object> {
  fetch: FetchPart<P>;
  /** Called where the part can't be fetched. */
  close: () => void;
  /** What the part is given. */
  props: P;
}

/** A part of the page that is fetched once, when it is first shown. Where it can't be fetched it is said, and `close` is called. */
export function FetchedPart<P extends object>({ fetch, close, props }: Props<P>) {
  const [Part, setPart] = useState<ComponentType<P> | null>(() => recall(fetch));
  useEffect(() => {
    let isWanted = true;
    fetchPart(fetch).then(
      (part) => isWanted && setPart(() => part),
      () => isWanted && refuse(close),
    );
    return () => {
      isWanted = false;
    };
  }, [fetch, close]);
  return Part && <Part {...props} />;
}

/** Fetches parts before they are asked for, so that they then show at once. What fails now is tried again, and said, when it is asked for. */
export function prefetch(parts: readonly (() => Promise<unknown>)[]): void {
  void Promise.allSettled(parts.map((fetch) => fetchPart(fetch as FetchPart)));
}

const recall = <P extends object>(fetch: FetchPart<P>) => (fetched.get(fetch) ?? null) as ComponentType<P> | null;

async function fetchPart<P extends object>(fetch: FetchPart<P>): Promise<ComponentType<P>> {
  const part = recall(fetch) ?? (await fetch());
  fetched.set(fetch, part);
  return part;
}

function refuse(close: () => void): void {
  close();
  actions.showMessage(
    'refused',
    'This part of the page can’t be fetched. See that the page’s server can be reached, then load the page again: the plan is kept.',
  );
}
