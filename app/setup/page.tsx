import type { Metadata } from 'next';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopFacts } from '@/app/_server/outlook';
import { TitleBlock } from '@/app/_shared/ui';
import { shopDb, shopName } from '@/db/client';
import { findGaugeSettings, findShop, gaugeSettingsInForce, listPeople } from '@/db/queries/shop';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { CountPanel } from './_parts/count-panel';
import { FoundForm } from './_parts/found-form';
import { GaugeRulesPanel } from './_parts/gauge-rules-panel';
import { GuessPanel } from './_parts/guess-panel';
import { PeoplePanel } from './_parts/people-panel';
import { SettingsPanel } from './_parts/settings-panel';
import { sizeTiles } from './_parts/size-tiles';
import { SizesPanel } from './_parts/sizes-panel';
import { WhichShop } from './_parts/which-shop';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Set-up' };

/** Setting up: which shop is served, and for a shop of one's own its sizes, first guesses, people and opening counts. */
export default async function SetupPage() {
  const shop = findShop(shopDb());
  const facts = shopFacts();
  const { connections } = facts;
  const offered = SHIPPED_CONNECTIONS.filter(({ id }) => !connections.some((row) => row.id === id));
  if (shop === undefined) {
    return (
      <div className="page">
        <TitleBlock
          title="A shop of your own"
          lead="Say who you are and which sizes you work in. Everything can be changed later, and nothing is ever lost."
        />
        <FoundForm stamp={newStamp()} sizes={sizeTiles(offered)} />
        <WhichShop serving={shopName()} />
      </div>
    );
  }
  return (
    <div className="page">
      <TitleBlock
        title="Set-up"
        lead="Sizes in use, first guesses, opening counts, people, and how sure the plan has to be."
      />
      <WhichShop serving={shopName()} />
      <SizesPanel connections={connections} offered={sizeTiles(offered)} stamp={newStamp()} />
      <GuessPanel facts={facts} stamp={newStamp()} />
      <CountPanel facts={facts} stamp={newStamp()} />
      <div className="columns">
        <PeoplePanel people={listPeople(shopDb())} stamp={newStamp()} />
        <SettingsPanel shop={shop} stamp={newStamp()} />
      </div>
      <GaugeRulesPanel
        settings={gaugeSettingsInForce(shopDb())}
        isSet={findGaugeSettings(shopDb()) !== undefined}
        stamp={newStamp()}
      />
    </div>
  );
}
