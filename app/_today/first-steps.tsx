import type { Route } from 'next';
import Link from 'next/link';
import { TitleBlock } from '@/app/_shared/ui';
import type { Outlook } from '@/lib/outlook/outlook';
import styles from './today.module.css';

interface Step {
  readonly href: Route;
  readonly title: string;
  readonly note: string;
  readonly done: boolean;
}

/** An empty shop: three steps to the first answer, each marked once it is done. */
export function FirstSteps({
  outlook,
  lineCount,
}: {
  readonly outlook: Outlook;
  readonly lineCount: number;
}) {
  const { connections, tools } = outlook.facts;
  const steps: Step[] = [
    {
      href: '/setup',
      title: 'Set up the shop',
      note: 'Its name, who works here, which sizes are in use, and about how long a die or a blade lasts.',
      done: connections.length > 0,
    },
    {
      href: '/import',
      title: 'Import what you have',
      note: 'Tools, cuts and jobs from spreadsheets. Every row is shown before anything is taken over.',
      done: tools.length > 0,
    },
    {
      href: '/plan/jobs/new',
      title: 'Enter a job',
      note: 'One line is enough to learn what can be made, and what is missing.',
      done: lineCount > 0,
    },
  ];
  const next = steps.find(({ done }) => !done);
  return (
    <div className="page">
      <TitleBlock
        title="An empty shop"
        lead="Three steps, in this order, until this page can say what can be made."
      />
      <ol className={styles.steps}>
        {steps.map((step) => (
          <li key={step.href} data-next={step === next ? '' : undefined}>
            <h2>
              <Link href={step.href}>{step.title}</Link>
              {step.done ? <span className="quiet"> done</span> : null}
            </h2>
            <p className="quiet">{step.note}</p>
          </li>
        ))}
      </ol>
    </div>
  );
}
