import { Button, ButtonLink } from '@/app/_shared/ui';
import type { ImportState } from './import-state';
import { KIND_WORDS } from './kind-words';
import type { useImport } from './use-import';

interface WayOutProps {
  readonly state: ImportState;
  readonly send: ReturnType<typeof useImport>['send'];
}

/** What to press after a refusal: say who you are, send once more, or read the file as what it looks like. */
export function WayOut({ state, send }: WayOutProps) {
  const { file, columns, refusal } = state;
  if (file === null || refusal === null) return null;
  if (refusal.code === 'who') return <ButtonLink href="/who?back=/import">Choose your name</ButtonLink>;
  if (refusal.code === 'lost' || refusal.code === 'fault')
    return (
      <Button onClick={() => send(refusal.work, file, columns?.mapping ?? null)}>
        {refusal.work === 'run' ? 'Send it again' : 'Check it again'}
      </Button>
    );
  if (refusal.code !== 'missing') return null;
  return columns?.fits.map((kind) => (
    <Button key={kind} onClick={() => send('check', { ...file, kind }, null)}>
      It reads like a {KIND_WORDS[kind].label.toLowerCase()} file: read it as one
    </Button>
  ));
}
