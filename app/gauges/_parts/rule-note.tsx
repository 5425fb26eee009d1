import Link from 'next/link';
import { count, percent } from '@/app/_shared/format';
import { KeyValue, Panel } from '@/app/_shared/ui';
import { DUE_SOON_DAYS } from '@/lib/gauge/due';
import type { GaugeSettings } from '@/lib/shop/gauge-settings';
import { DECISION_RULE_WORDS } from './decision-rules';

/** By which rules the gauges are judged, in one place. */
export function RuleNote({ settings }: { readonly settings: GaugeSettings }) {
  return (
    <Panel title="By which rules" id="rules">
      <KeyValue
        items={[
          {
            label: 'In or out',
            value: `With the figures of a certificate: in when the error lies ${DECISION_RULE_WORDS[settings.decisionRule]}. Another rule can be chosen with the certificate; the one that decided is kept with the result. Without figures the laboratory’s own word counts.`,
          },
          {
            label: 'Due',
            value: `Valid to the end of the due day, or to its last end, whichever comes first. Due soon from ${count(DUE_SOON_DAYS, 'day')} before, or when a tenth of its ends is left.`,
          },
          {
            label: 'Interval',
            value: `Proposed so that a gauge is still within its limits at the end of it with a chance of ${percent(settings.targetReliability)} at least. A person decides, with a reason.`,
          },
          {
            label: 'Why these',
            value: (
              <>
                {settings.why} They are set under <Link href="/setup#gauges">Set-up</Link>.
              </>
            ),
          },
        ]}
      />
    </Panel>
  );
}
