'use client';
import { Button, ButtonLink } from './_shared/ui/button';
import { TitleBlock } from './_shared/ui/title-block';

interface Props {
  readonly error: Error & { readonly digest?: string };
  readonly retry: () => void;
}

export default function ErrorPage({ error, retry }: Props) {
  return (
    <div className="page">
      <TitleBlock
        title="This page could not be drawn"
        lead="The fault is in Edgekeep, not in what you did. What was acknowledged before is kept; check the log before entering anything again."
        cells={
          error.digest ? [{ label: 'Fault number', value: <span className="id">{error.digest}</span> }] : []
        }
        actions={
          <>
            <Button tone="primary" onClick={() => retry()}>
              Try again
            </Button>
            <ButtonLink href="/ledger">Open the log</ButtonLink>
          </>
        }
      />
    </div>
  );
}
