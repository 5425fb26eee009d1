import { newStamp } from '@/app/_server/entry-stamp';
import { Panel, VerdictMark } from '@/app/_shared/ui';
import { lifeWords } from '@/app/_shared/words/fluid-words';
import { BottleLink } from '@/app/fluid/_parts/pick-panel';
import { type FluidWork, isTitanium } from '@/lib/fluid/permit-fluid';
import { bottleStanding, pickFirst } from '@/lib/fluid/pick-first';
import { wordBar } from '@/lib/fluid/word-bar';
import { type ShopBottle, shopBottles } from '@/lib/outlook/fluid-facts';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import type { AboutBottle } from './about-bottle';
import { DisposeForm, ExtendForm } from './bottle-forms';

/** May it be used: if not, why, what to use instead, and the two ways on: extend it where that is allowed, or dispose of it. */
export function LifePanel({ tool, bottle, facts }: AboutBottle) {
  if (tool.disposal !== null || tool.state === 'scrapped' || tool.state === 'lost')
    return tool.disposal === null && tool.state === 'scrapped' ? (
      <WithoutNote tool={tool} facts={facts} />
    ) : null;
  const { today } = facts;
  const work = ownWork(bottle, facts);
  const standing = bottleStanding(bottle, work, today);
  const why = wordBar(standing, work, today);
  if (why === null)
    return (
      <Panel title="May it be used?">
        <div className="stack">
          <VerdictMark verdict="can-make">
            Yes, to the end of its day: {lifeWords(standing.useBy, today)}
          </VerdictMark>
          <p className="quiet">On what it is permitted, and not on what it is not: see its part.</p>
          <Ways tool={tool} bottle={bottle} facts={facts} open={false} />
        </div>
      </Panel>
    );
  return (
    <Panel title="May it be used?">
      <div className="stack">
        <VerdictMark verdict="cannot-make-now" alarm>
          Not to be used
        </VerdictMark>
        <p>
          <strong>{why}</strong>
        </p>
        <Instead work={work} facts={facts} />
        {bottle.chlorinated === 'no' ? <ForTitanium facts={facts} duty={work.duty} /> : null}
        <Ways tool={tool} bottle={bottle} facts={facts} open />
      </div>
    </Panel>
  );
}

/** The work that the bottle itself is for: a material and a service that it is permitted on. */
function ownWork(
  { permittedMaterialIds, permittedDuties, chlorinated }: ShopBottle,
  facts: ShopFacts,
): FluidWork {
  const steel = facts.materials.find(({ isReference }) => isReference)?.id ?? '';
  const materialId =
    permittedMaterialIds === undefined ||
    permittedMaterialIds === 'all' ||
    permittedMaterialIds.includes(steel)
      ? steel
      : (permittedMaterialIds[0] ?? steel);
  const duty = permittedDuties?.[0] ?? 'ordinary';
  return { materialId, titanium: materialId !== steel && chlorinated === 'no', duty };
}

function Instead({ work, facts }: { readonly work: FluidWork; readonly facts: ShopFacts }) {
  const [first] = pickFirst(shopBottles(facts), work, facts.today);
  return (
    <p>
      {first ? (
        <>
          Use <BottleLink id={first.bottle.toolId} /> first: {first.bottle.part.name}, use by{' '}
          {lifeWords(first.useBy, facts.today)}.
        </>
      ) : (
        'No other bottle here will do.'
      )}
    </p>
  );
}

/** What a chlorine-free bottle was perhaps kept for. */
function ForTitanium({ facts, duty }: { readonly facts: ShopFacts; readonly duty: FluidWork['duty'] }) {
  const titanium = facts.materials.find(isTitanium);
  if (titanium === undefined) return null;
  const [first] = pickFirst(
    shopBottles(facts),
    { materialId: titanium.id, titanium: true, duty },
    facts.today,
  );
  return first ? (
    <p>
      For titanium: <BottleLink id={first.bottle.toolId} />.
    </p>
  ) : null;
}

function Ways({ tool, bottle, facts, open }: AboutBottle & { readonly open: boolean }) {
  const about = { toolId: tool.id, today: facts.today };
  return (
    <>
      {bottle.lotFacts?.shelfLife === 'extendable' ? (
        <details open={open}>
          <summary>Extend its life after an inspection</summary>
          <ExtendForm {...about} stamp={newStamp()} />
        </details>
      ) : open ? (
        <p className="quiet">
          {bottle.lotFacts === undefined
            ? 'Whether its life may be extended is not written down: see its lot below.'
            : 'The shelf life of its lot ends on a fixed day: it cannot be extended.'}
        </p>
      ) : null}
      <details open={open}>
        <summary>Dispose of it</summary>
        <DisposeForm {...about} stamp={newStamp()} levelMl={tool.levelMl} />
      </details>
    </>
  );
}

function WithoutNote({ tool, facts }: Pick<AboutBottle, 'tool' | 'facts'>) {
  return (
    <Panel title="Where did it go?">
      <p>It is scrapped and no transfer note is written down. Used oil is controlled waste: keep the note.</p>
      <DisposeForm toolId={tool.id} today={facts.today} stamp={newStamp()} levelMl={tool.levelMl} />
    </Panel>
  );
}
