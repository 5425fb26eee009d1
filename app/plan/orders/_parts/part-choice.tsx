import { Button, Panel, Select } from '@/app/_shared/ui';
import type { Part } from '@/lib/shop/part';
import { ROLE_LABEL, ROLES } from '@/lib/shop/vocabulary';

/** First what is ordered. A GET form: the address can be kept, and it works without script. */
export function PartChoice({
  parts,
  partId,
}: {
  readonly parts: readonly Part[];
  readonly partId: string | undefined;
}) {
  const ordered = ROLES.flatMap((role) => parts.filter((part) => part.role === role));
  return (
    <Panel title="What is ordered">
      <form action="/plan/orders/new" className="cluster">
        <Select
          name="part"
          label="Part"
          placeholder="Choose a part"
          defaultValue={partId}
          options={ordered.map((part) => ({
            value: part.id,
            label: `${ROLE_LABEL[part.role]}: ${part.name}`,
          }))}
        />
        <Button type="submit" tone={partId === undefined ? 'primary' : 'quiet'}>
          {partId === undefined ? 'Go on' : 'Change'}
        </Button>
      </form>
    </Panel>
  );
}
