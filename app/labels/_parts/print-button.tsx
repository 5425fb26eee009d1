'use client';

import { Button } from '@/app/_shared/ui';

/** Opens the printer's own window. Without script the browser's menu does the same. */
export function PrintButton() {
  return (
    <div className="stack-tight">
      <div>
        <Button tone="primary" onClick={() => window.print()}>
          Print
        </Button>
      </div>
      <p className="fine">Print at 100 %, without margins and without fitting to the page.</p>
    </div>
  );
}
