import { dayText, momentText } from '@/app/_shared/format';
import { Breadcrumb, TitleBlock } from '@/app/_shared/ui';
import { PrintButton } from '@/app/_shared/ui/print-button';
import type { Names } from '@/app/_shared/words/entry-words';
import { outcomeWords } from '@/app/_shared/words/trace-words';
import { lookOutcome } from '@/lib/acceptance/look-outcome';
import type { EndTrace } from '@/lib/trace/end-trace';

interface TraceHeadProps {
  readonly trace: EndTrace;
  readonly names: Names;
  readonly nowMs: number;
  readonly timeZone: string;
}

/** Which end it is, of what tube, and what became of it. */
export function TraceHead({ trace, names, nowMs, timeZone }: TraceHeadProps) {
  const { mark, jobLineId, connectionId, materialId, heat, shippedOnDay } = trace;
  return (
    <>
      <Breadcrumb trail={[{ href: '/trace', label: 'Trace' }]} here={mark ?? placeWords(trace)} />
      <TitleBlock
        title={mark ?? placeWords(trace)}
        lead={`${names.connection(connectionId)} in ${names.material(materialId)}. From the record as it stood on ${momentText(nowMs, timeZone)}.`}
        cells={[
          {
            label: 'Job line',
            value: jobLineId === null ? 'none' : mark === null ? jobLineId : placeWords(trace),
          },
          { label: 'Heat', value: heat === '' ? 'not written down' : heat },
          { label: 'Result', value: <b>{resultWords(trace)}</b> },
          {
            label: 'Where',
            value: shippedOnDay === null ? 'not shipped on record' : `left ${dayText(shippedOnDay)}`,
          },
        ]}
        actions={<PrintButton />}
      />
    </>
  );
}

/** As it was accepted; or, where gauges were missing then, as it was gauged again since. */
function resultWords({ looks }: EndTrace): string {
  const [first, ...again] = looks;
  if (first === undefined) return 'not known';
  const passed = again.find((look) => lookOutcome(look) === 'passed');
  return outcomeWords(lookOutcome(first) === 'not-gauged' && passed !== undefined ? passed : first);
}

function placeWords({ endNo, jobLineId }: EndTrace): string {
  const where = jobLineId === null ? '' : ` of ${jobLineId}`;
  return endNo === null ? `An end${where}` : `End ${endNo}${where}`;
}
