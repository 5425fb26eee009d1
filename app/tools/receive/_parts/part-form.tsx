import { Button, Panel, Select } from '@/app/_shared/ui';
import type { Part } from '@/lib/shop/part';
import { ROLE_LABEL, ROLES } from '@/lib/shop/vocabulary';

/** First what it is. A GET form: the address can be kept. */
export function PartForm({
  parts,
  partId,
  orderId,
}: {
  parts: readonly Part[];
  partId: string | undefined;
  orderId: string;
}) {
  const ordered = ROLES.flatMap((role) => parts.filter((part) => part.role === role));
  return (
    <Panel title="What is it">
      <form action="/tools/receive" className="cluster">
        {orderId === '' ? null : <input type="hidden" name="order" value={orderId} />}
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
