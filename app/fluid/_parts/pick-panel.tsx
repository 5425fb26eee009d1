import Link from 'next/link';
import { Cautions } from '@/app/_shared/cautions';
import { volumeText } from '@/app/_shared/format';
import { Button, ButtonLink, EmptyState, Figure, Panel, Select, ToolId } from '@/app/_shared/ui';
import { lifeWords } from '@/app/_shared/words/fluid-words';
import { materialWords } from '@/app/_shared/words/material-words';
import { serviceCautionPlaces } from '@/lib/cautions';
import type { FluidWork } from '@/lib/fluid/permit-fluid';
import { type BottleStanding, bottleStanding, pickFirst } from '@/lib/fluid/pick-first';
import { wordBar } from '@/lib/fluid/word-bar';
import { type ShopBottle, shopBottles } from '@/lib/outlook/fluid-facts';
import { productFor } from '@/lib/outlook/fluid-supply';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { DUTIES, DUTY_LABEL } from '@/lib/shop/duty';

interface PickPanelProps {
  readonly facts: ShopFacts;
  readonly work: FluidWork;
}

/** Which bottle to use first for a material and a service, what else will do, and why the others will not. */
export function PickPanel({ facts, work }: PickPanelProps) {
  const bottles = shopBottles(facts);
  const fit = pickFirst(bottles, work, facts.today);
  const barred = bottles
    .map((bottle) => bottleStanding(bottle, work, facts.today))
    .filter(({ bar }) => bar !== null);
  const [first, ...others] = fit;
  return (
    <Panel title="Use first" aside={aside(facts, work)}>
      <div className="stack">
        <AskForm facts={facts} work={work} />
        {first ? <First standing={first} today={facts.today} /> : <None facts={facts} work={work} />}
        {others.length > 0 ? (
          <p>
            Then{' '}
            {others.map(({ bottle, useBy }, i) => (
              <span key={bottle.toolId}>
                {i > 0 ? '; ' : ''}
                <BottleLink id={bottle.toolId} /> ({lifeWords(useBy, facts.today)})
              </span>
            ))}
            .
          </p>
        ) : null}
        {barred.length > 0 ? <Barred barred={barred} work={work} today={facts.today} /> : null}
        {serviceCautionPlaces(work).map((place) => (
          <Cautions key={place} at={place} />
        ))}
      </div>
    </Panel>
  );
}

function aside(facts: ShopFacts, work: FluidWork): string {
  const material = facts.materials.find(({ id }) => id === work.materialId);
  return `${material ? materialWords(material) : work.materialId}, ${DUTY_LABEL[work.duty]}`;
}

function AskForm({ facts, work }: PickPanelProps) {
  return (
    <form action="/fluid" className="cluster no-print">
      <Select
        name="material"
        label="Material"
        defaultValue={work.materialId}
        options={facts.materials.map((material) => ({ value: material.id, label: materialWords(material) }))}
      />
      <Select
        name="duty"
        label="Service"
        defaultValue={work.duty}
        options={DUTIES.map((duty) => ({ value: duty, label: DUTY_LABEL[duty] }))}
      />
      <Button type="submit">Show</Button>
    </form>
  );
}

function First({ standing, today }: { standing: BottleStanding<ShopBottle>; today: string }) {
  const { bottle, useBy } = standing;
  const open = bottle.openedOnDay === null ? ' Write the day on it when you open it.' : '';
  return (
    <Figure
      value={<BottleLink id={bottle.toolId} />}
      note={
        <>
          {bottle.part.name}, {bottle.levelMl === null ? 'level not read' : volumeText(bottle.levelMl)}, use
          by {lifeWords(useBy, today)}.{open}
        </>
      }
    />
  );
}

function None({ facts, work }: PickPanelProps) {
  const part = productFor(facts, work);
  return (
    <EmptyState
      title="No bottle here may be used for this"
      action={
        part ? (
          <ButtonLink href={`/plan/orders/new?part=${encodeURIComponent(part.id)}`}>
            Order {part.name}
          </ButtonLink>
        ) : (
          <ButtonLink href="/parts">See the list of parts</ButtonLink>
        )
      }
    >
      {part
        ? `${part.name} is permitted for it; none is here and in date.`
        : 'No fluid on the shop’s list is permitted for it. Add one whose sheet says that it may be used.'}
    </EmptyState>
  );
}

function Barred({
  barred,
  work,
  today,
}: {
  readonly barred: readonly BottleStanding<ShopBottle>[];
  readonly work: FluidWork;
  readonly today: string;
}) {
  return (
    <details open={barred.some(({ bar }) => bar?.why === 'over-life')}>
      <summary>Not for this: {barred.length}</summary>
      <ul>
        {barred.map((standing) => (
          <li key={standing.bottle.toolId}>
            <BottleLink id={standing.bottle.toolId} />{' '}
            {withoutId(wordBar(standing, work, today) ?? '', standing.bottle.toolId)}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** The sentence after the linked ID: "is chlorinated: not on titanium". */
function withoutId(sentence: string, id: string): string {
  return sentence.startsWith(`${id} `) ? sentence.slice(id.length + 1) : sentence;
}

export function BottleLink({ id }: { readonly id: string }) {
  return (
    <Link href={`/fluid/${encodeURIComponent(id)}`} prefetch={false}>
      <ToolId id={id} />
    </Link>
  );
}
