import { newStamp } from '@/app/_server/entry-stamp';
import { Panel } from '@/app/_shared/ui';
import type { GaugeView } from '../../_parts/gauge-view';
import { CalibrationForm } from './calibration-form';
import { CheckForm } from './check-forms';
import type { GaugeCard } from './gauge-card';

/** A check in the shop, and a certificate that came back: what is done to a gauge, most frequent first. */
export function CheckPanel({
  view: { gauge },
  card,
  today,
}: {
  readonly view: GaugeView;
  readonly card: GaugeCard;
  readonly today: string;
}) {
  if (gauge.state === 'lost') return null;
  const about = { toolId: gauge.id, today };
  const setAside = gauge.state === 'quarantined';
  const away = gauge.state === 'calibration';
  return (
    <>
      {away ? null : (
        <Panel title="Check in the shop">
          <CheckForm {...about} stamp={newStamp()} masters={card.masters} setAside={setAside} />
        </Panel>
      )}
      <Panel title="Calibration">
        <details open={away}>
          <summary>Record a certificate</summary>
          <CalibrationForm
            {...about}
            stamp={newStamp()}
            proposedDueDay={card.proposedDueDay}
            laboratory={gauge.laboratory ?? ''}
            masters={card.masters}
            figures={card.figures}
            rule={card.settings.decisionRule}
          />
        </details>
      </Panel>
    </>
  );
}
