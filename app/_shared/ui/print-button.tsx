'use client';

/** <PrintButton tone? />: opens the browser's own printing. Without script the browser's menu does the same. */
import { Button, type ButtonTone } from './button';

export function PrintButton({ tone = 'quiet' }: { readonly tone?: ButtonTone }) {
  return (
    <Button tone={tone} onClick={() => window.print()}>
      Print
    </Button>
  );
}
