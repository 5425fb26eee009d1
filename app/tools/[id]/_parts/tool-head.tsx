import type { Route } from 'next';
import Link from 'next/link';
import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { dueText, exposureText, inDays } from '@/app/_shared/format';
import { Breadcrumb, HandText, StateMark, TitleBlock, type TitleCell, ToolId } from '@/app/_shared/ui';
import type { ToolRow } from '@/db/queries/tools';
import { isEdgeKind } from '@/lib/outlook/edge-histories';
import { fluidExpiresOnDay } from '@/lib/outlook/plan-facts';
import type { EdgeFacts } from '@/lib/outlook/shop-facts';
import type { Part } from '@/lib/shop/part';
import { CALIBRATED_ROLES, ROLE_LABEL } from '@/lib/shop/vocabulary';
import { fromMicro } from '@/lib/units/micro';
import type { CutInHand } from './cut-in-hand';

interface ToolHeadProps {
  readonly tool: ToolRow;
  readonly part: Part;
  readonly edges: readonly EdgeFacts[];
  readonly cut: CutInHand | undefined;
  readonly today: string;
}

/** The head of a tool's page: its mark, what it is, its size drawn to scale, where it stands. */
export function ToolHead({ tool, part, edges, cut, today }: ToolHeadProps) {
  return (
    <>
      <Breadcrumb trail={[{ href: '/tools', label: 'Tools' }]} here={tool.id} />
      <TitleBlock
        title={<ToolId id={tool.id} />}
        lead={part.designation === '' ? part.name : `${part.name}, ${part.designation}`}
        drawing={cut ? <ConnectionEnd connection={cut.connection} pxPerIn={110} /> : undefined}
        cells={cells({ tool, part, edges, today })}
        actions={
          <>
            <Link href={`/tools/${encodeURIComponent(tool.id)}/card` as Route} prefetch={false}>
              History card
            </Link>
            {isTraced(tool.role) ? (
              <Link href={`/trace?q=${encodeURIComponent(tool.id)}` as Route} prefetch={false}>
                Ends made with it
              </Link>
            ) : null}
            {tool.state === 'scrapped' || tool.state === 'lost' ? null : (
              <Link href={`/plan/what-if?toolId=${encodeURIComponent(tool.id)}` as Route} prefetch={false}>
                What if it were lost
              </Link>
            )}
          </>
        }
      />
    </>
  );
}

/** What an end was cut or gauged with. */
function isTraced(role: ToolRow['role']): boolean {
  return isEdgeKind(role) || role === 'fluid' || CALIBRATED_ROLES.includes(role);
}

function cells({ tool, part, edges, today }: Omit<ToolHeadProps, 'cut'>): TitleCell[] {
  const state = tool.holderName === null ? undefined : `issued to ${tool.holderName}`;
  const back = tool.backOnDay === null ? null : `back ${inDays(tool.backOnDay, today)}`;
  return [
    {
      label: 'Stands',
      value: (
        <>
          <StateMark state={tool.state}>{state}</StateMark> {back}
        </>
      ),
    },
    { label: 'Kind', value: tool.hand ? <HandText hand={tool.hand} /> : ROLE_LABEL[tool.role] },
    ...edgeCell(tool, edges),
    ...dueCell(tool, part, today),
    { label: 'Lot', value: tool.lot === '' ? 'not written down' : tool.lot },
  ];
}

function edgeCell(tool: ToolRow, edges: readonly EdgeFacts[]): TitleCell[] {
  const edge = edges.at(-1);
  if (edge === undefined || !isEdgeKind(tool.role)) return [];
  const used = fromMicro(edge.use.reduce((sum, use) => sum + use.exposureMicro, 0));
  const ends = edge.use.reduce((sum, use) => sum + use.ends, 0);
  const which = edge.edgeNo > 1 ? `edge ${edge.edgeNo}: ` : '';
  return [{ label: 'Cut so far', value: `${which}${ends} ends, ${exposureText(tool.role, used)}` }];
}

function dueCell(tool: ToolRow, part: Part, today: string): TitleCell[] {
  if (tool.dueOnDay !== null) return [{ label: 'Calibration', value: dueText(tool.dueOnDay, today) }];
  if (tool.role !== 'fluid') return [];
  const expires = fluidExpiresOnDay(tool, part);
  return [
    { label: 'Use by', value: expires === null ? 'no day on record' : inDays(expires, today) },
    { label: 'Left', value: tool.levelMl === null ? 'not read' : `${tool.levelMl} mL` },
  ];
}
