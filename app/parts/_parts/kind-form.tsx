import { Button, Panel, Select } from '@/app/_shared/ui';
import { ROLE_LABEL, ROLES, type Role } from '@/lib/shop/vocabulary';

/** First what kind of part it is: what is asked of it follows from that. A GET form: the address can be kept. */
export function KindForm({ role }: { readonly role: Role }) {
  return (
    <Panel title="Kind">
      <form action="/parts/new" className="cluster">
        <Select
          name="kind"
          label="Kind of part"
          defaultValue={role}
          options={ROLES.map((value) => ({ value, label: ROLE_LABEL[value] }))}
        />
        <Button type="submit">Change</Button>
      </form>
    </Panel>
  );
}
