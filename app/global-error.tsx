'use client';
import './globals.css';
import { Button } from './_shared/ui/button';
import { TitleBlock } from './_shared/ui/title-block';

interface Props {
  readonly error: Error & { readonly digest?: string };
  readonly retry: () => void;
}

/** Shown when even the frame cannot be drawn, as when the shop's database cannot be read. */
export default function GlobalError({ error, retry }: Props) {
  return (
    <html lang="en-GB" data-theme="auto">
      <body>
        <title>Edgekeep cannot show this page</title>
        <main style={{ padding: 'clamp(1rem, 5vw, 4rem)' }}>
          <TitleBlock
            title="Edgekeep cannot show this page"
            lead="What was acknowledged before is kept. Look at the window that Edgekeep was started from: it says what is wrong."
            cells={
              error.digest
                ? [{ label: 'Fault number', value: <span className="id">{error.digest}</span> }]
                : []
            }
            actions={
              <Button tone="primary" onClick={() => retry()}>
                Try again
              </Button>
            }
          />
        </main>
      </body>
    </html>
  );
}
