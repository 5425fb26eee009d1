'use client';

import { Button } from '@/app/_shared/ui';

/** Prints the page. Without script the browser's own print command does the same. */
export function PrintButton() {
  return (
    <Button tone="primary" onClick={() => window.print()}>
      Print
    </Button>
  );
}
