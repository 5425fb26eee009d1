import { volumeText } from '@/app/_shared/format';
import { ButtonLink, Panel } from '@/app/_shared/ui';
import { needSentence, purchaseSentence } from '@/app/_shared/words/fluid-words';
import { type FluidNeed, fluidNeeds } from '@/lib/outlook/fluid-needs';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { LevelFan } from './level-fan';

/** How long each fluid lasts with the plan, and by when to order it. */
export function NeedPanels({ facts }: { readonly facts: ShopFacts }) {
  return fluidNeeds(facts).map((need) => <NeedPanel key={need.part.id} need={need} facts={facts} />);
}

function NeedPanel({ need, facts }: { readonly need: FluidNeed; readonly facts: ShopFacts }) {
  const { today } = facts;
  const buy = purchaseSentence(need, today);
  return (
    <Panel title={need.part.name} aside={`${volumeText(need.usableMl)} usable`}>
      <div className="stack">
        <p>
          <strong>{needSentence(need, today)}</strong> {buy}
        </p>
        <LevelFan need={need} today={today} />
        <div className="cluster no-print">
          <ButtonLink href={`/plan/orders/new?part=${encodeURIComponent(need.part.id)}`}>
            Order some
          </ButtonLink>
          <ButtonLink tone="quiet" href={`/parts/${encodeURIComponent(need.part.id)}`}>
            What it is permitted on
          </ButtonLink>
        </div>
        <p className="fine">An estimate from levels and counts. Look at the bottle too.</p>
      </div>
    </Panel>
  );
}
