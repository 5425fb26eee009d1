import { Panel } from '@/app/_shared/ui';
import type { DueKind } from '@/lib/due-dates/due-date';
import { feedHref } from './address';

/** Where other calendars find these dates. */
export function FeedPanel({ kinds, host }: { readonly kinds: readonly DueKind[]; readonly host: string }) {
  const href = feedHref(kinds);
  return (
    <div className="no-print">
      <Panel title="In your own calendar">
        <div className="stack-tight">
          <p>
            Let a calendar program subscribe to{' '}
            <a href={href}>
              http://{host}
              {href}
            </a>
            . It holds what is ticked above and is read every hour.
          </p>
          <p className="quiet">
            Whoever has the address can read these dates, as everyone on this network can open this page. It
            names jobs, sizes and tools, no persons, and nothing can be changed through it.
          </p>
        </div>
      </Panel>
    </div>
  );
}
