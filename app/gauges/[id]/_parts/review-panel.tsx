import Link from 'next/link';
import { newStamp } from '@/app/_server/entry-stamp';
import { chanceWords, percent } from '@/app/_shared/format';
import { Button, NumberField, Panel, Table } from '@/app/_shared/ui';
import type { MethodAdvice } from '@/lib/gauge/interval-methods';
import { chanceAfterDays, type IntervalReview } from '@/lib/gauge/interval-review';
import { INTERVAL_METHODS } from '@/lib/shop/gauge-entry';
import type { GaugeSettings } from '@/lib/shop/gauge-settings';
import type { GaugeView } from '../../_parts/gauge-view';
import { intervalWords, monthsWords } from '../../_parts/gauge-words';
import { DriftChart } from './drift-chart';
import { IntervalForm } from './interval-form';

interface ReviewPanelProps {
  readonly view: GaugeView;
  readonly review: IntervalReview;
  /** The interval in force, set or read off the last certificate. */
  readonly inForceDays: number | null;
  /** How sure an interval shall be, and why. */
  readonly settings: GaugeSettings;
  /** Days that somebody asks about. */
  readonly askedDays: number | undefined;
  readonly who: string;
}

/** How long a calibration of it should be good for: what each way of review says, a proposal, and a person's decision. */
export function ReviewPanel(props: ReviewPanelProps) {
  const { view, review, inForceDays, settings, who } = props;
  const { gauge } = view;
  const { proposal } = review;
  const inForce = inForceDays === null ? 'No interval is in force' : `Now ${monthsWords(inForceDays)}`;
  return (
    <Panel title="How long is a calibration good for" id="interval" aside={inForce}>
      <div className="stack">
        <DriftChart review={review} dueOnDay={gauge.dueOnDay} />
        <Table
          caption="What each way of review says"
          rows={review.advice}
          rowKey={({ method }) => method}
          columns={[
            { key: 'way', header: 'Way', lead: true, cell: ({ method }) => methodLabel(method) },
            { key: 'says', header: 'Says', cell: says },
            { key: 'why', header: 'Why', cell: ({ why }) => why },
          ]}
        />
        <p>
          {proposal === undefined ? (
            'Proposal: keep the interval in force.'
          ) : (
            <>
              <strong>Proposal: {monthsWords(proposal.days)}</strong>, from the most cautious way that speaks:{' '}
              {methodLabel(proposal.method)}. {proposal.why}
            </>
          )}{' '}
          It should be within its limits at the end with a chance of {percent(settings.targetReliability)} at
          least. Nothing changes by itself.
        </p>
        <p className="fine">
          Why {percent(settings.targetReliability)}: {settings.why} <Link href="/setup#gauges">Set-up</Link>
        </p>
        <AskForm {...props} />
        <details className="no-print">
          <summary>Decide the interval (now: {intervalWords(gauge.interval)})</summary>
          <IntervalForm
            toolId={gauge.id}
            stamp={newStamp()}
            days={proposal?.days ?? inForceDays}
            ends={gauge.interval?.intervalEnds ?? null}
            method={proposal?.method ?? gauge.interval?.method ?? 'first-judgement'}
            who={who}
          />
        </details>
      </div>
    </Panel>
  );
}

function methodLabel(method: MethodAdvice['method']): string {
  return INTERVAL_METHODS.find(({ code }) => code === method)?.label ?? method;
}

function says({ days, ends }: MethodAdvice): string {
  if (days !== null) return monthsWords(days);
  return ends === null ? 'nothing yet' : `${ends} ends`;
}

/** "Can we stretch it to 18 months?" A GET form: the address can be kept. */
function AskForm({ view, review, askedDays, inForceDays }: ReviewPanelProps) {
  const chance = askedDays === undefined ? undefined : chanceAfterDays(review, askedDays);
  return (
    <form action={`/gauges/${encodeURIComponent(view.gauge.id)}#interval`} className="cluster">
      <NumberField
        name="days"
        label="What if it were"
        unit="days"
        defaultValue={askedDays ?? inForceDays ?? 365}
        maxLength={4}
      />
      <Button type="submit">Ask</Button>
      {askedDays === undefined ? null : (
        <p role="status">
          {chance === undefined
            ? 'No certificate states an error with its limits, so the record cannot say.'
            : `After ${monthsWords(askedDays)} it is still within its limits: ${chanceWords(chance)}, an estimate from ${review.history?.points.length ?? 0} errors.`}
        </p>
      )}
    </form>
  );
}
