import type { Metadata } from 'next';
import { Breadcrumb, EmptyState, Panel, TitleBlock } from '@/app/_shared/ui';
import { ThreadForm } from './_parts/thread-form';
import { askedFields, threadQuestion } from './_parts/thread-question';
import { WiresPanel } from './_parts/wires-panel';
import { WorkedThread } from './_parts/worked-thread';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Work a thread out' };

/** Any unified thread worked out: its name, limits of size, the collar's, and the wires that it is measured over. */
export default async function ThreadsPage({ searchParams }: PageProps<'/threads'>) {
  const asked = await searchParams;
  const question = threadQuestion(asked);
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/sizes', label: 'Sizes' }]} here="Work a thread out" />
      <TitleBlock
        title="Work a thread out"
        lead="Limits of size, best wires and the pitch diameter behind a measurement, for any unified thread."
      />
      <Panel title="Which thread">
        <ThreadForm
          fields={askedFields(asked)}
          refusal={question?.ok === false ? question.refusal : undefined}
        />
      </Panel>
      {question === undefined ? (
        <EmptyState title="No thread yet">
          Write a size and its threads per inch. A size of the shop has its own sheet under Sizes.
        </EmptyState>
      ) : null}
      {question?.ok ? (
        <>
          <WorkedThread question={question.value} />
          <WiresPanel question={question.value} asked={asked} />
        </>
      ) : null}
    </div>
  );
}
