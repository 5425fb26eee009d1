import { count, dayText, inDays } from '@/app/_shared/format';
import { Breadcrumb, StateMark, TitleBlock, ToolId } from '@/app/_shared/ui';
import { PrintButton } from '@/app/_shared/ui/print-button';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { DueMark } from '../../_parts/due-mark';
import type { GaugeView } from '../../_parts/gauge-view';
import { dueWords, intervalInForce } from '../../_parts/gauge-words';

/** The head of a gauge's card: may it accept, until when, how long since. */
export function GaugeHead({ view, facts }: { readonly view: GaugeView; readonly facts: ShopFacts }) {
  const { gauge, part, due } = view;
  const { today } = facts;
  const back = gauge.backOnDay === null ? null : `, back ${inDays(gauge.backOnDay, today)}`;
  const held = gauge.holderName === null ? undefined : `issued to ${gauge.holderName}`;
  return (
    <>
      <Breadcrumb trail={[{ href: '/gauges', label: 'Gauges' }]} here={gauge.id} />
      <TitleBlock
        title={<ToolId id={gauge.id} />}
        lead={
          part.designation === ''
            ? `${part.name}, ${ROLE_LABEL[gauge.role]}`
            : `${part.name}, ${part.designation}`
        }
        cells={[
          {
            label: 'May accept',
            value: (
              <DueMark
                state={gauge.state}
                due={due}
                alarm={due.standing === 'overdue' || due.standing === 'ends-used'}
              />
            ),
          },
          {
            label: 'Stands',
            value: (
              <>
                <StateMark state={gauge.state}>{held}</StateMark>
                {back}
              </>
            ),
          },
          { label: 'Calibration', value: dueWords(gauge.dueOnDay, due, today) },
          { label: 'Interval', value: intervalInForce(gauge) },
          {
            label: 'Last certificate',
            value:
              gauge.calibratedOnDay === null
                ? 'none on record'
                : `${dayText(gauge.calibratedOnDay, today)}${gauge.laboratory === null ? '' : `, ${gauge.laboratory}`}`,
          },
          { label: 'Gauged since', value: gaugedSince(view, today) },
        ]}
        actions={<PrintButton />}
      />
    </>
  );
}

/** Ends gauged since its last certificate, and when the plan will have used up what is left, where that is counted. */
function gaugedSince({ gauge, endsUsedUpOnDay }: GaugeView, today: string): string {
  const since = gauge.endsSince === 0 ? 'no ends' : count(gauge.endsSince, 'end');
  return endsUsedUpOnDay === null
    ? since
    : `${since}; used up ${inDays(endsUsedUpOnDay, today)}, by the plan`;
}
