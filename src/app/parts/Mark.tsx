import type { Verdict } from '../../rules';

/** The mark of a verdict: each has its own shape, so that nothing depends on hue. */
export function Mark({ verdict, size = 14 }: { verdict: Verdict; size?: number }) {
  return (
    <svg className={`mark mark-${verdict}`} width={size} height={size} viewBox="0 0 14 14" aria-hidden="true">
      {SHAPES[verdict]}
    </svg>
  );
}

const SHAPES: Record<Verdict, React.ReactNode> = {
  stop: <rect x="1.5" y="1.5" width="11" height="11" fill="currentColor" />,
  watch: <path d="M7 1 13.4 12.6H.6z" fill="currentColor" />,
  ask: (
    <>
      <circle cx="7" cy="7" r="5.9" fill="none" stroke="currentColor" strokeWidth="1.4" />
      <path d="M5.2 5.5a1.85 1.85 0 1 1 2.5 1.7c-.5.2-.7.5-.7 1.1" fill="none" stroke="currentColor" strokeWidth="1.3" />
      <circle cx="7" cy="10.2" r=".85" fill="currentColor" />
    </>
  ),
  clear: <path d="m2 7.4 3.4 3.6L12 3.2" fill="none" stroke="currentColor" strokeWidth="1.8" />,
};
