import type { Metadata } from 'next';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { count } from '@/app/_shared/format';
import { ButtonLink, TitleBlock } from '@/app/_shared/ui';
import { listTools } from '@/db/queries/tools';
import { FilterForm } from './_parts/filter-form';
import { StockBySize } from './_parts/stock-by-size';
import { filterTools, readToolFilter } from './_parts/tool-filter';
import { ToolList } from './_parts/tool-list';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Tools' };

/** The crib: stock by size and service with where each tool stands, then the tools themselves. */
export default async function ToolsPage({ searchParams }: PageProps<'/tools'>) {
  const filter = readToolFilter(await searchParams);
  const { outlook, db, asOfMs } = await shopView();
  const parts = new Map(outlook.facts.parts.map((part) => [part.id, part]));
  const tools = listTools(db);
  const shown = filterTools(tools, parts, filter);
  const asked = filter.find !== '' || filter.size !== '' || filter.role !== '' || filter.state !== 'here';
  const inHouse = tools.filter(({ state }) => state !== 'scrapped' && state !== 'lost').length;
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <TitleBlock
        title="Tools"
        lead="What the crib holds, by size and service, and where each tool stands."
        cells={[
          { label: 'In the house', value: count(inHouse, 'tool') },
          {
            label: 'Issued now',
            value: count(tools.filter(({ state }) => state === 'issued').length, 'tool'),
          },
          {
            label: 'Set aside',
            value: count(tools.filter(({ state }) => state === 'quarantined').length, 'tool'),
          },
        ]}
        actions={
          <>
            <ButtonLink href="/tools/receive" tone="primary">
              Receive a tool
            </ButtonLink>
            <ButtonLink href="/wear">How long they last</ButtonLink>
          </>
        }
      />
      {asked ? null : <StockBySize outlook={outlook} tools={tools} parts={parts} />}
      <FilterForm filter={filter} outlook={outlook} />
      <ToolList tools={shown} filter={filter} outlook={outlook} parts={parts} />
    </div>
  );
}
