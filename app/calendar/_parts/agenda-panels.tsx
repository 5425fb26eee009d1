import { EmptyState, Panel } from '@/app/_shared/ui';
import type { DueDate } from '@/lib/due-dates/due-date';
import { Agenda } from './agenda';

interface AgendaPanelsProps {
  readonly label: string;
  readonly overdue: readonly DueDate[];
  readonly dues: readonly DueDate[];
  readonly today: string;
}

/** What is overdue, of whatever month, and then the month as a list. */
export function AgendaPanels({ label, overdue, dues, today }: AgendaPanelsProps) {
  const late = new Set(overdue);
  const rest = dues.filter((due) => !late.has(due));
  return (
    <>
      {overdue.length === 0 ? null : (
        <Panel title="Overdue">
          <Agenda dues={overdue} today={today} />
        </Panel>
      )}
      <Panel title={`All of ${label}`}>
        {rest.length === 0 ? (
          <EmptyState title="Nothing else falls due in this month">
            Look at another month, or tick more kinds.
          </EmptyState>
        ) : (
          <Agenda dues={rest} today={today} />
        )}
      </Panel>
    </>
  );
}
