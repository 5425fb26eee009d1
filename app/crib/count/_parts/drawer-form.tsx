import { Button, Panel, Select } from '@/app/_shared/ui';
import { connectionText } from '@/lib/shop/connection-text';
import type { Connection } from '@/lib/shop/noun';
import type { Drawer } from '@/lib/shop/stock-count';

interface DrawerFormProps {
  readonly connections: readonly Connection[];
  readonly drawer: Drawer;
}

/** One drawer instead of all of them: what lies in the others is then not missing. A GET form: the address can be kept. */
export function DrawerForm({ connections, drawer }: DrawerFormProps) {
  return (
    <Panel title="One drawer only">
      <form action="/crib/count" className="cluster" aria-label="One drawer only">
        <input type="hidden" name="scope" value="edges" />
        <Select
          name="size"
          label="Size"
          placeholder="Every size"
          defaultValue={drawer.connectionId ?? ''}
          options={connections.map((connection) => ({
            value: connection.id,
            label: connectionText(connection),
          }))}
        />
        <Select
          name="kind"
          label="Kind"
          placeholder="Blades and dies"
          defaultValue={drawer.edgeKind ?? ''}
          options={[
            { value: 'blade', label: 'Blades' },
            { value: 'die', label: 'Dies' },
          ]}
        />
        <Button type="submit">Count this drawer</Button>
      </form>
    </Panel>
  );
}
