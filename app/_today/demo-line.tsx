import Link from 'next/link';

/** Says that all this is invented, and where one's own shop begins. */
export function DemoLine() {
  return (
    <p className="quiet no-print">
      This is a demo shop; everything in it is invented. <Link href="/setup">Start your own</Link>
    </p>
  );
}
