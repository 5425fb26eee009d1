import { ButtonLink } from '@/app/_shared/ui';

/** What a lead does from the plan, and the other faces of it. */
export function PlanActions() {
  return (
    <>
      <ButtonLink href="/plan/jobs/new" tone="primary">
        Enter a job
      </ButtonLink>
      <ButtonLink href="/plan/what-if">What if</ButtonLink>
      <ButtonLink href="/plan/week">Tools for the week</ButtonLink>
      <ButtonLink href="/plan/weeks">Sizes by week</ButtonLink>
      <ButtonLink href="/plan/replace">When to change edges</ButtonLink>
      <ButtonLink href="/plan/orders">Orders</ButtonLink>
      <ButtonLink href="/plan/costs">Costs</ButtonLink>
      <ButtonLink href="/calendar">Calendar</ButtonLink>
      <ButtonLink href="/import">Import jobs</ButtonLink>
    </>
  );
}
