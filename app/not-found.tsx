import type { Metadata } from 'next';
import { ButtonLink } from './_shared/ui/button';
import { TitleBlock } from './_shared/ui/title-block';

export const metadata: Metadata = { title: 'Not found' };

export default function NotFound() {
  return (
    <div className="page">
      <TitleBlock
        title="Nothing is kept under this address"
        lead="The tool, size or job may carry another ID. Scan its label again, or type the ID in the box above."
        actions={
          <>
            <ButtonLink href="/tools" tone="primary">
              All tools
            </ButtonLink>
            <ButtonLink href="/">Today</ButtonLink>
          </>
        }
      />
    </div>
  );
}
