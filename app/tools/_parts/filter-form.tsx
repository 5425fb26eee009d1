import { Button, ButtonLink, Field, Select } from '@/app/_shared/ui';
import type { Outlook } from '@/lib/outlook/outlook';
import { connectionText } from '@/lib/shop/connection-text';
import { ROLE_LABEL, ROLES, TOOL_STATE_LABEL, TOOL_STATES } from '@/lib/shop/vocabulary';
import type { ToolFilter } from './tool-filter';

/** Narrows the list of tools. A GET form: the address says what is shown and can be kept. */
export function FilterForm({ filter, outlook }: { filter: ToolFilter; outlook: Outlook }) {
  const states = [
    { value: 'here', label: 'in the house' },
    { value: 'all', label: 'all, scrapped and lost too' },
    ...TOOL_STATES.map((value) => ({ value, label: TOOL_STATE_LABEL[value] })),
  ];
  return (
    <form action="/tools" className="cluster no-print" aria-label="Narrow the list">
      <Field id="filter-find" name="find" label="ID" defaultValue={filter.find} size={12} maxLength={40} />
      <Select
        name="size"
        label="Size"
        placeholder="all sizes"
        defaultValue={filter.size}
        options={outlook.facts.connections.map((connection) => ({
          value: connection.id,
          label: connectionText(connection),
        }))}
      />
      <Select
        name="kind"
        label="Kind"
        placeholder="all kinds"
        defaultValue={filter.role}
        options={ROLES.map((value) => ({ value, label: ROLE_LABEL[value] }))}
      />
      <Select name="state" label="Stands" defaultValue={filter.state} options={states} />
      <Button type="submit">Show</Button>
      <ButtonLink href="/tools">Show all</ButtonLink>
    </form>
  );
}
