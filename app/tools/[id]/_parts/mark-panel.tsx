import { newStamp } from '@/app/_server/entry-stamp';
import { CodeMark } from '@/app/_shared/codes/code-mark';
import { ButtonLink, Panel } from '@/app/_shared/ui';
import type { ToolRow } from '@/db/queries/tools';
import { MarkForm } from './mark-form';

/** The tool's mark: print its label, or write down that it was marked again. Nothing for what is gone. */
export function MarkPanel({ tool, today }: { readonly tool: ToolRow; readonly today: string }) {
  if (tool.state === 'scrapped' || tool.state === 'lost') return null;
  const id = encodeURIComponent(tool.id);
  return (
    <Panel title="Its mark">
      <div className="stack">
        <div className="cluster">
          <CodeMark kind="qr" text={tool.id} sideMm={24} />
          <ButtonLink href={`/labels?id=${id}`}>Print its label</ButtonLink>
        </div>
        <details>
          <summary>Marked again</summary>
          <MarkForm toolId={tool.id} today={today} stamp={newStamp()} />
        </details>
      </div>
    </Panel>
  );
}
