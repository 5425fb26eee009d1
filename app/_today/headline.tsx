import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { count, dayText, inDays } from '@/app/_shared/format';
import { ButtonLink, TitleBlock, VerdictMark } from '@/app/_shared/ui';
import { wayLink } from '@/app/_shared/words/way-words';
import { chanceSentence } from '@/app/plan/_parts/life-words';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import { verdictHeadline } from '@/lib/capability/verdict-headline';
import { wordBlocker } from '@/lib/capability/word-blocker';
import type { Outlook } from '@/lib/outlook/outlook';
import { waysOut } from '@/lib/outlook/ways-out';
import { capital } from '@/lib/text/capital';

interface HeadlineProps {
  readonly outlook: Outlook;
  readonly rows: readonly PlanRow[];
  readonly worst: PlanRow | undefined;
  readonly lineLabel: (lineId: string) => string;
}

/** The one thing to read first: the worst blocker with its date and the next step, or that all is well. */
export function Headline({ outlook, rows, worst, lineLabel }: HeadlineProps) {
  if (worst === undefined) return <AllWell outlook={outlook} rows={rows} />;
  const { today } = outlook.facts;
  const { line, verdict, endsToMake, materialText, connection } = worst;
  const [blocker] = verdict.blockers;
  const chance = chanceSentence(verdict);
  const next = blocker && waysOut(blocker, line, outlook.facts)[0];
  const step = next && wayLink(next, today);
  return (
    <TitleBlock
      title={verdictHeadline(worst.sizeText, verdict)}
      lead={
        <>
          <VerdictMark verdict={verdict.verdict} alarm={verdict.verdict === 'cannot-make-now'} />{' '}
          {blocker ? wordBlocker(blocker, { lineLabel }) : null}
          {chance === '' ? null : ` ${capital(chance)}.`}
        </>
      }
      drawing={connection ? <ConnectionEnd connection={connection} pxPerIn={72} /> : undefined}
      cells={[
        { label: 'Job', value: lineLabel(line.id).replace(/^job /, '') },
        { label: 'To make', value: `${count(endsToMake, 'end')} in ${materialText}` },
        { label: 'Starts', value: inDays(line.startOnDay, today) },
        { label: 'Due', value: dayText(line.dueOnDay, today) },
        {
          label: 'All clear',
          value: verdict.clearsOnDay === null ? 'no known date' : inDays(verdict.clearsOnDay, today),
        },
      ]}
      actions={
        <>
          {step ? (
            <ButtonLink href={step.href} tone="primary">
              {step.label}
            </ButtonLink>
          ) : null}
          <ButtonLink href={`/plan/lines/${encodeURIComponent(line.id)}`}>
            {verdict.blockers.length > 1 ? `All ${verdict.blockers.length} reasons` : 'The whole line'}
          </ButtonLink>
        </>
      }
    />
  );
}

function AllWell({ outlook, rows }: Pick<HeadlineProps, 'outlook' | 'rows'>) {
  const open = rows.filter(({ endsToMake }) => endsToMake > 0);
  const ends = open.reduce((sum, row) => sum + row.endsToMake, 0);
  if (open.length === 0)
    return (
      <TitleBlock
        title="Nothing is planned"
        lead="No job is open. Enter one to see whether it can be made, and what is missing."
        actions={
          <>
            <ButtonLink href="/plan/jobs/new" tone="primary">
              Enter a job
            </ButtonLink>
            <ButtonLink href="/import">Import jobs</ButtonLink>
          </>
        }
      />
    );
  const last =
    open
      .map(({ line }) => line.dueOnDay)
      .sort()
      .at(-1) ?? outlook.facts.today;
  return (
    <TitleBlock
      title="Everything planned can be made"
      lead={
        <>
          <VerdictMark verdict="can-make" /> {count(open.length, 'line')}, {count(ends, 'end')}, the last due{' '}
          {inDays(last, outlook.facts.today)}.
        </>
      }
      actions={<ButtonLink href="/plan">The plan</ButtonLink>}
    />
  );
}
