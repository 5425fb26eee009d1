'use client';

import { useRouter } from 'next/navigation';
import { useEffect } from 'react';

const AGAIN_MS = 10_000;

/** Asks the server again while something is being worked out. Without script the browser reloads the page. */
export function LookAgain({ everyMs = AGAIN_MS }: { readonly everyMs?: number }) {
  const router = useRouter();
  useEffect(() => {
    const timer = setInterval(() => router.refresh(), everyMs);
    return () => clearInterval(timer);
  }, [router, everyMs]);
  return (
    <noscript>
      <meta httpEquiv="refresh" content="30" />
    </noscript>
  );
}
