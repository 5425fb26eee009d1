'use client';

import { Button } from '@/app/_shared/ui';

/** Opens the browser's own printing. */
export function PrintButton() {
  return (
    <Button type="button" onClick={() => window.print()}>
      Print
    </Button>
  );
}
