import { LimitRows } from '@/app/_shared/thread/limits-table';
import { LimitsView } from '@/app/_shared/thread/limits-view';
import { lookAlikeWords, threadSpelledOut } from '@/app/_shared/thread/thread-words';
import { Panel } from '@/app/_shared/ui';
import { threadDesignation } from '@/lib/thread/designation';
import { type InternalClass, internalThreadLimits } from '@/lib/thread/internal-limits';
import { type ExternalClass, externalThreadLimits } from '@/lib/thread/limits';
import type { ThreadQuestion } from './thread-question';

/** The collar's class that goes with the tube's. */
const MATE: Record<ExternalClass, InternalClass> = { '1A': '1B', '2A': '2B', '3A': '3B' };

/** A thread worked out: its name, its limits and those of the thread that runs on it. */
export function WorkedThread({ question }: { readonly question: ThreadQuestion }) {
  const { threadClass } = question;
  const limits = externalThreadLimits(question, threadClass);
  const named = threadDesignation(question);
  const designation = named.series === undefined ? `${named.screenText} (special)` : named.screenText;
  const lookAlike = lookAlikeWords(question, limits.series);
  const mate = MATE[threadClass];
  const inside = internalThreadLimits(question, mate);
  return (
    <>
      <Panel title={designation} aside={`class ${threadClass}, external`} id="limits">
        <p>{threadSpelledOut(question, limits.series)}.</p>
        {lookAlike ? <p className="quiet">{lookAlike}</p> : null}
        <LimitsView limits={limits} designation={designation} threadClass={threadClass} />
        <p className="fine">
          By the formulas of ASME B1.1, rounded in the order of its tables. Left and right hand have the same
          limits. What the fitting’s drawing or the maker’s manual says goes before them.
        </p>
      </Panel>
      <Panel title="The thread that runs on it" aside={`class ${mate}, internal`} id="mate">
        <LimitRows
          caption={`Limits of size of the internal thread, class ${mate}`}
          rows={[
            { name: 'Pitch diameter', max: inside.pitchMaxIn, min: inside.pitchMinIn },
            { name: 'Minor diameter', max: inside.minorMaxIn, min: inside.minorMinIn },
          ]}
        />
      </Panel>
    </>
  );
}
