import type { Route } from 'next';
import Link from 'next/link';
import { count, listWords } from '@/app/_shared/format';
import { KeyValue, Panel, ToolId } from '@/app/_shared/ui';
import type { Names } from '@/app/_shared/words/entry-words';
import { gapWords } from '@/app/_shared/words/trace-words';
import { turnsText } from '@/lib/acceptance/turns-text';
import { CONE_CONTACT_LABEL } from '@/lib/shop/acceptance';
import { DISPOSITION_LABEL } from '@/lib/shop/recall';
import { REJECT_CAUSES } from '@/lib/shop/vocabulary';
import type { EndTrace, TracedLook } from '@/lib/trace/end-trace';
import { traceGaps } from '@/lib/trace/trace-gaps';
import type { TracedCut } from '@/lib/trace/traced-cut';
import { GaugeTable } from './gauge-table';
import styles from './trace.module.css';
import { WorkTable } from './work-table';

interface TraceSheetProps {
  readonly trace: EndTrace;
  readonly cuts: readonly TracedCut[];
  readonly names: Names;
  readonly moment: (ms: number) => string;
}

/** Everything that is known of one end, on one sheet of paper, and what is not. */
export function TraceSheet({ trace, cuts, names, moment }: TraceSheetProps) {
  const [first] = trace.looks;
  if (first === undefined) return null;
  const gaps = traceGaps(trace, cuts);
  return (
    <div className={styles.sheet}>
      <Panel title="Who, when, with what" aside="coned and threaded: by the count of the cut log">
        <WorkTable {...{ trace, cuts, names, moment }} />
      </Panel>
      <Panel title="Gauged with">
        {trace.looks.map((look) => (
          <GaugeTable key={look.acceptanceId} look={look} />
        ))}
      </Panel>
      <div className={styles.pair}>
        <Panel title="What was seen">
          <KeyValue items={seen(first)} />
        </Panel>
        <Panel title="Besides">
          <Besides trace={trace} />
        </Panel>
      </div>
      <Panel title="What the record does not say">
        {gaps.length === 0 ? (
          <p>Nothing that was asked for is missing.</p>
        ) : (
          <ul className={styles.gaps}>
            {gaps.map((gap) => (
              <li key={gapWords(gap)}>{gapWords(gap)}</li>
            ))}
          </ul>
        )}
      </Panel>
    </div>
  );
}

function seen({ rule, finish, coneContact, exposedThreads, boreClear, fluid }: TracedLook) {
  return [
    {
      label: 'NOT GO rule',
      value: rule === null ? 'none on record' : `at most ${turnsText(rule.notGoTurnsMax)}: ${rule.whose}`,
    },
    { label: 'Finish', value: finish === 'smooth' ? 'smooth to the nail' : 'a mark can be felt' },
    { label: 'Cone contact', value: CONE_CONTACT_LABEL[coneContact] },
    {
      label: 'Exposed threads',
      value: exposedThreads === null ? 'not counted' : String(exposedThreads),
    },
    { label: 'Bore', value: boreClear ? 'looked through, clear' : 'not clear, or not looked through' },
    {
      label: 'Fluid',
      value:
        fluid === null
          ? 'not written down'
          : `${fluid.toolId}${fluid.lot === '' ? '' : `, lot ${fluid.lot}`}`,
    },
  ];
}

/** Refusals on its line up to then, later looks, and recalls. */
function Besides({ trace: { refusedBefore, recalls, looks } }: { readonly trace: EndTrace }) {
  return (
    <div className="stack-tight">
      <p>
        {refusedBefore.length === 0
          ? 'No end of its line had been refused by then.'
          : `Refused on its line by then: ${listWords(refusedBefore.map(({ endCount, cause }) => `${count(endCount, 'end')} (${causeWords(cause)})`))}.`}
      </p>
      <p>
        {looks.length > 1
          ? `Gauged again ${looks.length - 1 === 1 ? 'once' : `${looks.length - 1} times`}.`
          : 'Not gauged again since.'}
      </p>
      {recalls.length === 0 ? (
        <p>No recall names it.</p>
      ) : (
        recalls.map(({ recallId, gaugeId, status, hows }) => (
          <p key={recallId}>
            Recall{' '}
            <Link href={`/recalls/${encodeURIComponent(recallId)}` as Route} prefetch={false}>
              {recallId}
            </Link>{' '}
            of <ToolId id={gaugeId} />, {status}:{' '}
            {hows.length === 0
              ? 'nothing decided yet.'
              : `of the ends looked at with it, ${listWords(hows.map((how) => DISPOSITION_LABEL[how]))}.`}
          </p>
        ))
      )}
    </div>
  );
}

function causeWords(cause: string): string {
  return REJECT_CAUSES.find(({ code }) => code === cause)?.label ?? cause;
}
