'use client';

import { useRouter } from 'next/navigation';
import { useEffect } from 'react';

const AGAIN_MS = 10_000;

/** Asks the server again while something is being worked out. Without script the browser reloads the page. */
export function LookAgain() {
  const router = useRouter();
  useEffect(() => {
    const timer = setInterval(() => router.refresh(), AGAIN_MS);
    return () => clearInterval(timer);
  }, [router]);
  return (
    <noscript>
      <meta httpEquiv="refresh" content="30" />
    </noscript>
  );
}
