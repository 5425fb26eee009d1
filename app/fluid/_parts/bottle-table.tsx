import { volumeText } from '@/app/_shared/format';
import { ButtonLink, EmptyState, Panel, StateMark, Table } from '@/app/_shared/ui';
import { CHLORINATED_WORDS, lifeWords } from '@/app/_shared/words/fluid-words';
import { bottleUseBy, isOverLife } from '@/lib/fluid/use-by';
import { type ShopBottle, shopBottles } from '@/lib/outlook/fluid-facts';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import type { ToolState } from '@/lib/shop/vocabulary';
import { BottleLink } from './pick-panel';

/** Every bottle and can that is not gone, the one whose day comes first on top. */
export function BottleTable({ facts }: { readonly facts: ShopFacts }) {
  const { today } = facts;
  const rows = [...shopBottles(facts)].sort((a, b) =>
    (bottleUseBy(a).onDay ?? '9999') < (bottleUseBy(b).onDay ?? '9999') ? -1 : 1,
  );
  return (
    <Panel title="Bottles and cans" aside={`${rows.length} here`}>
      <Table
        caption="Bottles and cans, by the day to which they may be used"
        rows={rows}
        rowKey={(bottle) => bottle.toolId}
        empty={
          <EmptyState
            title="No fluid here"
            action={<ButtonLink href="/tools/receive">Receive a bottle</ButtonLink>}
          >
            Receive each bottle under an ID of its own, with its lot and its shelf-life day.
          </EmptyState>
        }
        columns={[
          { key: 'id', header: 'Bottle', lead: true, cell: (b) => <BottleLink id={b.toolId} /> },
          { key: 'what', header: 'What', cell: (b) => b.part.name },
          { key: 'lot', header: 'Lot', cell: (b) => <Lot bottle={b} /> },
          {
            key: 'left',
            header: 'Left',
            numeric: true,
            cell: (b) => (b.levelMl === null ? 'not read' : volumeText(b.levelMl)),
          },
          { key: 'useBy', header: 'Use by', cell: (b) => <UseByCell bottle={b} today={today} /> },
          { key: 'chlorine', header: 'Chlorinated', cell: (b) => CHLORINATED_WORDS[b.chlorinated] },
          { key: 'stands', header: 'Stands', cell: (b) => <StateMark state={b.state as ToolState} /> },
        ]}
      />
    </Panel>
  );
}

function Lot({ bottle }: { readonly bottle: ShopBottle }) {
  if (bottle.lot === '') return <span className="quiet">not written down</span>;
  return (
    <>
      {bottle.lot}
      {bottle.lotFacts === undefined ? <span className="quiet">, sheet not written down</span> : null}
    </>
  );
}

function UseByCell({ bottle, today }: { readonly bottle: ShopBottle; readonly today: string }) {
  const useBy = bottleUseBy(bottle);
  const words = lifeWords(useBy, today);
  return isOverLife(useBy, today) ? <strong>Past its day: {words}</strong> : words;
}
