import Link from 'next/link';

/** Where the figures on this page come from, for whoever doubts them. */
export function MoreLine() {
  return (
    <p className="quiet no-print">
      <Link href="/wear">How long edges last here</Link>.{' '}
      <Link href="/scorecard">How often was it right?</Link>
    </p>
  );
}
