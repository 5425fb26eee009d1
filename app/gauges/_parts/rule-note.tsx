import { count, percent } from '@/app/_shared/format';
import { KeyValue, Panel } from '@/app/_shared/ui';
import { DUE_SOON_DAYS } from '@/lib/gauge/due';
import { INTERVAL_TARGET } from '../[id]/_parts/gauge-card';

/** By which rules the gauges are judged, in one place. */
export function RuleNote() {
  return (
    <Panel title="By which rules" id="rules">
      <KeyValue
        items={[
          {
            label: 'In or out',
            value:
              'With the figures of a certificate: in when the error lies within the limits less 1.645 u, so that it is right with 95 % at least. Another rule can be chosen with the certificate; the one that decided is kept with the result. Without figures the laboratory’s own word counts.',
          },
          {
            label: 'Due',
            value: `Valid to the end of the due day, or to its last end, whichever comes first. Due soon from ${count(DUE_SOON_DAYS, 'day')} before, or when a tenth of its ends is left.`,
          },
          {
            label: 'Interval',
            value: `Proposed so that a gauge is still within its limits at the end of it with a chance of ${percent(INTERVAL_TARGET)} at least. A person decides, with a reason.`,
          },
        ]}
      />
    </Panel>
  );
}
