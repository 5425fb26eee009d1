'use client';

/** <PrintButton />: opens the browser's own printing. Without script the browser's menu does the same. */
import { Button } from './button';

export function PrintButton() {
  return (
    <Button type="button" onClick={() => window.print()}>
      Print
    </Button>
  );
}
