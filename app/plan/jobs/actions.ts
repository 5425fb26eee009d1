'use server';

import type { Route } from 'next';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { act, refusedState } from '@/app/_server/act';
import { stamp, text } from '@/app/_server/form-fields';
import { shopOutlook } from '@/app/_server/outlook';
import type { FormState } from '@/app/_shared/form/form-state';
import { ruleOfForm } from '@/app/_shared/form/rule-of-form';
import { closeJob } from '@/db/commands/plan-job';
import { shownAtPlan } from '@/lib/outlook/shown-at-plan';
import { CloseJobInput, PlanJobInput } from '@/lib/shop/command-input';
import { inFormTerms, readJobLines } from './_parts/read-job-lines';
import { changeJob, enterJob } from './_parts/save-job';

/** Enters a new job, then shows its verdict on the plan. */
export async function enterJobAction(_state: FormState, form: FormData): Promise<FormState> {
  return saveJob(form, enterJob);
}

/** Changes a job: its lines are replaced by what the form says. */
export async function changeJobAction(_state: FormState, form: FormData): Promise<FormState> {
  return saveJob(form, changeJob);
}

async function saveJob(form: FormData, save: typeof enterJob): Promise<FormState> {
  const lines = readJobLines(form);
  if (!lines.ok) return refusedState(lines.refusal, form);
  const raw = {
    ...stamp(form),
    reason: text(form, 'reason'),
    job: {
      id: text(form, 'id'),
      title: text(form, 'title'),
      lines: lines.value,
      acceptanceRule: ruleOfForm(form),
    },
  };
  const outlook = await shopOutlook();
  const command: typeof enterJob = (db, permit, input, env) =>
    save(db, permit, { ...input, job: { ...input.job, shown: shownAtPlan(outlook, input.job) } }, env);
  const done = await act({ action: 'plan-job', schema: PlanJobInput, command }, raw, form);
  if (!done.ok) {
    if (done.state.status !== 'refused') return done.state;
    const numbers = lines.value.map((line) => ('lineNo' in line ? Number(line.lineNo) : 0));
    return { ...done.state, ...inFormTerms(done.state, numbers) };
  }
  revalidatePath('/', 'layout');
  redirect(`/plan?${new URLSearchParams({ job: raw.job.id, entry: done.value.id })}` as Route);
}

/** Closes a job: done, or cancelled with the reason. */
export async function closeJobAction(_state: FormState, form: FormData): Promise<FormState> {
  const raw = {
    ...stamp(form),
    reason: text(form, 'reason'),
    jobId: text(form, 'jobId'),
    how: text(form, 'how'),
  };
  if (raw.how === 'cancelled' && raw.reason === '')
    return refusedState({ code: 'why', sentence: 'Say why it is cancelled.', field: 'reason' }, form);
  const done = await act({ action: 'plan-job', schema: CloseJobInput, command: closeJob }, raw, form);
  if (!done.ok) return done.state;
  revalidatePath('/', 'layout');
  redirect(`/plan?${new URLSearchParams({ closed: raw.jobId, entry: done.value.id })}` as Route);
}
