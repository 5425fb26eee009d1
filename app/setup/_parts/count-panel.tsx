import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { ButtonLink, Panel } from '@/app/_shared/ui';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { CALIBRATED_ROLES, ROLES } from '@/lib/shop/vocabulary';
import { CountForm, type CountRow } from './count-form';

/** Opening counts: what is on the shelf on the first day. */
export function CountPanel({ facts, stamp }: { facts: ShopFacts; stamp: EntryStamp }) {
  const { parts, tools, today } = facts;
  const rows: CountRow[] = ROLES.flatMap((role) => parts.filter((part) => part.role === role)).map(
    (part) => ({
      partId: part.id,
      partName: part.name,
      known: tools.filter(
        (tool) => tool.partId === part.id && tool.state !== 'scrapped' && tool.state !== 'lost',
      ).length,
      calibrated: CALIBRATED_ROLES.includes(part.role),
      hasEdge: part.role === 'blade' || part.role === 'die',
      fluid: part.role === 'fluid',
    }),
  );
  return (
    <Panel title="Opening counts" aside={<ButtonLink href="/import">Import a list instead</ButtonLink>}>
      <CountForm rows={rows} today={today} stamp={stamp} openAtFirst={tools.length === 0} />
    </Panel>
  );
}
