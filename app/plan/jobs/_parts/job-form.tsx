'use client';

import { type ReactNode, useState, useSyncExternalStore } from 'react';
import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { useGivenBack } from '@/app/_shared/form/given-back';
import { RuleFields } from '@/app/_shared/form/rule-fields';
import { Button, Field, type Option, Panel, SubmitButton } from '@/app/_shared/ui';
import type { AcceptanceRule } from '@/lib/shop/acceptance-rule';
import { changeJobAction, enterJobAction } from '../actions';
import type { LineDraft } from './job-draft';
import { LineFields } from './line-fields';

export interface JobFormProps {
  readonly stamp: EntryStamp;
  /** Null: a new job. */
  readonly job: {
    readonly id: string;
    readonly title: string;
    readonly acceptanceRule?: AcceptanceRule;
  } | null;
  /** Lines shown at once. */
  readonly lines: readonly LineDraft[];
  /** Empty lines: behind a fold without script, and the ones that "Add a line" takes from. */
  readonly spare: readonly LineDraft[];
  readonly connections: readonly Option[];
  readonly materials: readonly Option[];
}

/** Enters or changes a job. Without script the spare lines stand folded below; with it they are added one by one. */
export function JobForm({ stamp, job, lines, spare, connections, materials }: JobFormProps) {
  return (
    <EntryForm
      action={job === null ? enterJobAction : changeJobAction}
      stamp={stamp}
      label={job === null ? 'Enter a job' : `Change job ${job.id}`}
      className="stack-loose"
    >
      <Panel title={job === null ? 'Job' : 'Change it'}>
        <div className="columns">
          <JobNumber job={job} />
          <Field name="title" label="What it is" optional maxLength={120} defaultValue={job?.title ?? ''} />
          {job === null ? null : <Field name="reason" label="Why it changes" optional maxLength={300} />}
        </div>
      </Panel>
      <Lines {...{ lines, spare, connections, materials }} />
      <Panel title="Acceptance">
        <RuleFields
          rule={job?.acceptanceRule}
          otherwise="Left empty: as the size table says, else the shop"
        />
      </Panel>
      <div>
        <SubmitButton>{job === null ? 'Put it on the plan' : 'Save the changes'}</SubmitButton>
      </div>
    </EntryForm>
  );
}

function JobNumber({ job }: Pick<JobFormProps, 'job'>) {
  if (job !== null) return <input type="hidden" name="id" value={job.id} />;
  return (
    <Field
      name="id"
      label="Job number"
      hint="As on the traveller: letters, digits, dashes"
      required
      maxLength={64}
      autoComplete="off"
    />
  );
}

type LinesProps = Pick<JobFormProps, 'lines' | 'spare' | 'connections' | 'materials'>;

function Lines({ lines, spare, connections, materials }: LinesProps) {
  const scripted = useSyncExternalStore(subscribe, yes, no);
  const [added, setAdded] = useState(0);
  const [removed, setRemoved] = useState<ReadonlySet<number>>(new Set());
  const spares = [...spare, ...moreSpares(spare, added)];
  const shown = [...lines, ...(scripted ? spares.slice(0, added) : [])].filter(
    ({ lineNo }) => !removed.has(lineNo),
  );
  const remove = (lineNo: number) => setRemoved((before) => new Set([...before, lineNo]));
  const fields = (draft: LineDraft, required: boolean) => (
    <LineFields {...{ draft, connections, materials, required }} />
  );
  return (
    <>
      {shown.map((draft, at) => (
        <Panel key={draft.lineNo} title={`Line ${draft.lineNo}`}>
          <div className="stack">
            {fields(draft, at === 0)}
            {scripted && shown.length > 1 && !draft.begun ? (
              <div>
                <Button onClick={() => remove(draft.lineNo)}>Remove line {draft.lineNo}</Button>
              </div>
            ) : null}
          </div>
        </Panel>
      ))}
      {scripted ? (
        <div>
          <Button onClick={() => setAdded(added + 1)}>Add a line</Button>
        </div>
      ) : (
        spare.map((draft) => (
          <Panel key={draft.lineNo} title={`Line ${draft.lineNo}`}>
            <SpareLine lineNo={draft.lineNo}>{fields(draft, false)}</SpareLine>
          </Panel>
        ))
      )}
    </>
  );
}

/** Without script: folded until something was typed into it. */
function SpareLine({ lineNo, children }: { readonly lineNo: number; readonly children: ReactNode }) {
  const ends = useGivenBack({ name: `line${lineNo}-ends`, start: '' });
  return (
    <details open={ends.start !== ''}>
      <summary>Another line, if the job has one. Left empty it does not count.</summary>
      {children}
    </details>
  );
}

/** Lines beyond the spare ones, numbered on. */
function moreSpares(spare: readonly LineDraft[], added: number): LineDraft[] {
  const last = spare.at(-1);
  if (last === undefined) return [];
  const missing = Math.max(0, added - spare.length);
  return Array.from({ length: missing }, (_, at) => ({ ...last, lineNo: last.lineNo + at + 1 }));
}

const subscribe = () => () => {};
const yes = () => true;
const no = () => false;
