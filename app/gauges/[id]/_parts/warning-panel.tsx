import type { Route } from 'next';
import Link from 'next/link';
import { count, dayText, listWords } from '@/app/_shared/format';
import { ButtonLink, Notice, Panel, ToolId } from '@/app/_shared/ui';
import type { OpenFinding } from '@/db/queries/gauge-looks';
import type { GaugeEvidence } from '@/lib/gauge/evidence';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import type { GaugeView } from '../../_parts/gauge-view';
import { untilWords } from '../../_parts/gauge-words';

interface WarningProps {
  readonly view: GaugeView;
  readonly last: GaugeEvidence | undefined;
  /** Ends accepted since it was last known good, and since when that was. */
  readonly stake: { readonly ends: number; readonly sinceDay: string | null };
  /** Gauges of its kind and size that may accept now. */
  readonly twinIds: readonly string[];
  /** Ways to check it in the shop. */
  readonly canCheck: boolean;
  /** Entries that found it out, and no recall opened for them. */
  readonly findings: readonly OpenFinding[];
  readonly today: string;
}

/** What stands in the way: set aside and why, overdue, or a job that outlasts it; each with the way on. */
export function WarningPanel(props: WarningProps) {
  const { view, last } = props;
  if (view.gauge.state === 'quarantined')
    return last?.asLeft === 'out' || last?.asFound === 'out' ? (
      <FoundOut {...props} />
    ) : (
      <SetAside {...props} />
    );
  if (view.due.standing === 'overdue' || view.due.standing === 'ends-used' || view.due.standing === 'none')
    return <OutOfDate {...props} />;
  if (props.findings.length > 0) return <NotListed {...props} />;
  return view.lapses.length > 0 ? <RunsOver {...props} /> : null;
}

function SetAside({ view, stake, twinIds, canCheck, today }: WarningProps) {
  const { gauge } = view;
  return (
    <Panel title={gauge.dropped === null ? 'Set aside' : 'Set aside after a knock'}>
      <div className="stack">
        {gauge.dropped === null ? <p>{gauge.stateReason || 'No reason was written down.'}</p> : null}
        <p>
          {canCheck
            ? 'To clear it: clean it, run it on its master below, and write down what you find. If it passes it goes back into the crib with that on its record.'
            : 'To clear it: send it for calibration, or have a master in date that it can be checked on.'}
        </p>
        <p>
          <strong>{stake.ends === 0 ? 'No ends' : count(stake.ends, 'end')}</strong>{' '}
          {stake.sinceDay === null
            ? 'accepted with it on record, and nothing yet that says when it was last good'
            : `accepted with it since it was last known good, ${dayText(stake.sinceDay, today)}`}
          : to be reviewed if it does not pass. Nothing to do about them until then.
        </p>
        <Instead role={gauge.role} twinIds={twinIds} />
      </div>
    </Panel>
  );
}

function FoundOut({ view, last, stake, twinIds, today }: WarningProps) {
  const { gauge } = view;
  return (
    <Panel title="Found out of limits">
      <div className="stack">
        <Notice level="notice" title="Do not accept with this gauge.">
          Work since its last good check is suspect until it is reviewed.
        </Notice>
        <p>
          <strong>{stake.ends === 0 ? 'No ends on record' : count(stake.ends, 'end')}</strong>{' '}
          {stake.sinceDay === null
            ? 'accepted with it: nothing says when it was last good.'
            : `accepted with it since it was last known good, ${dayText(stake.sinceDay, today)}.`}
        </p>
        <p>
          {last?.asLeft === 'in'
            ? 'It has been adjusted and is in now. Open the review first; then move it back into the crib.'
            : 'Open the review, then send it for adjustment, or scrap it.'}
        </p>
        <div className="cluster">
          <ButtonLink href={`/recalls/new?gauge=${encodeURIComponent(gauge.id)}`} tone="primary">
            Review what it accepted
          </ButtonLink>
          <ButtonLink href={`/tools/${encodeURIComponent(gauge.id)}`}>Move it</ButtonLink>
        </div>
        <Instead role={gauge.role} twinIds={twinIds} />
      </div>
    </Panel>
  );
}

/** Found out once, good again since, and nobody has looked at what it accepted before. */
function NotListed({ view: { gauge }, findings }: WarningProps) {
  return (
    <Panel title="Found out before">
      <div className="stack">
        <p>
          It is in now, and was found out on {listWords(findings.map(({ onDay }) => dayText(onDay)))}. What it
          accepted before that is not listed yet.
        </p>
        <div className="cluster">
          {findings.map(({ entryId, onDay }) => (
            <ButtonLink
              key={entryId}
              href={`/recalls/new?${new URLSearchParams({ gauge: gauge.id, entry: entryId })}` as Route}
            >
              Review up to {dayText(onDay)}
            </ButtonLink>
          ))}
        </div>
      </div>
    </Panel>
  );
}

function OutOfDate({ view, twinIds }: WarningProps) {
  const words = {
    overdue: 'Its calibration ran out at the end of its due day.',
    'ends-used': 'It has gauged all the ends that its calibration is good for.',
    none: 'It has no calibration in force.',
  } as const;
  const { standing } = view.due;
  const why =
    standing === 'overdue' || standing === 'ends-used' || standing === 'none' ? words[standing] : '';
  return (
    <Panel title="Not in date">
      <div className="stack">
        <Notice level="notice" title="Do not accept with this gauge.">
          {why}
        </Notice>
        <p>
          Cutting can go on; ends wait, capped, for a gauge in date. The day is not extended: it is calibrated
          anew.
        </p>
        <Instead role={view.gauge.role} twinIds={twinIds} />
        <div>
          <ButtonLink href={`/tools/${encodeURIComponent(view.gauge.id)}`}>
            Send it for calibration
          </ButtonLink>
        </div>
      </div>
    </Panel>
  );
}

function RunsOver({ view, today }: WarningProps) {
  const { lapses, gauge } = view;
  const twins = [...new Set(lapses.flatMap(({ twinIds }) => twinIds))];
  const last = lapses[0]?.usableToDay ?? today;
  return (
    <Panel title="A job runs past it">
      <div className="stack">
        <p>
          {listWords([...new Set(lapses.map(({ lineId }) => lineId))])} {lapses.length === 1 ? 'runs' : 'run'}{' '}
          on after it is due. It may accept {untilWords(last, today)}; after that the ends are cut but not
          accepted with it.
        </p>
        {twins.length > 0 ? (
          <Instead role={gauge.role} twinIds={twins} />
        ) : (
          <p>
            No twin is in date for the whole job: send it early, before the job starts, or plan the gauging by
            then.
          </p>
        )}
      </div>
    </Panel>
  );
}

function Instead({
  role,
  twinIds,
}: {
  readonly role: GaugeView['gauge']['role'];
  readonly twinIds: readonly string[];
}) {
  if (twinIds.length === 0) return <p>No other {ROLE_LABEL[role]} of this size is in date in the crib.</p>;
  return (
    <p>
      In date instead:{' '}
      {twinIds.map((id, at) => (
        <span key={id}>
          {at > 0 ? ', ' : ''}
          <Link href={`/gauges/${encodeURIComponent(id)}`} prefetch={false}>
            <ToolId id={id} />
          </Link>
        </span>
      ))}
    </p>
  );
}
