import { dayText, factorText, volumeText } from '@/app/_shared/format';
import { Breadcrumb, ButtonLink, StateMark, TitleBlock, ToolId } from '@/app/_shared/ui';
import { CHLORINATED_WORDS, lifeWords } from '@/app/_shared/words/fluid-words';
import { bottleUseBy } from '@/lib/fluid/use-by';
import { bottleRatio } from '@/lib/outlook/fluid-facts';
import { DISPOSAL_LABEL } from '@/lib/shop/fluid-entry';
import type { AboutBottle } from './about-bottle';

/** What the bottle is, where it stands, what is left and to which day. */
export function BottleHead({ tool, bottle, facts }: AboutBottle) {
  const { today } = facts;
  const { disposal } = tool;
  const id = encodeURIComponent(tool.id);
  return (
    <>
      <Breadcrumb trail={[{ href: '/fluid', label: 'Fluid' }]} here={tool.id} />
      <TitleBlock
        title={<ToolId id={tool.id} />}
        lead={`${bottle.part.name}, lot ${bottle.lot === '' ? 'not written down' : bottle.lot}`}
        cells={[
          {
            label: 'Stands',
            value:
              disposal === null ? (
                <StateMark state={tool.state} />
              ) : (
                `gone ${dayText(disposal.onDay, today)}: ${DISPOSAL_LABEL[disposal.how]}${disposal.transferNote === '' ? '' : `, note ${disposal.transferNote}`}`
              ),
          },
          { label: 'Left', value: tool.levelMl === null ? 'not read' : volumeText(tool.levelMl) },
          { label: 'Opened', value: tool.openedOnDay === null ? 'closed' : dayText(tool.openedOnDay, today) },
          { label: 'Use by', value: lifeWords(bottleUseBy(bottle), today) },
          { label: 'Chlorinated', value: CHLORINATED_WORDS[bottle.chlorinated] },
          {
            label: 'Drops in a mL',
            value: `${factorText(bottle.dropsPerMl)}${tool.dropsPerMl === null ? ', not counted here' : ', counted'}`,
          },
          {
            label: 'Leaves the bottle',
            value: `${factorText(bottleRatio(facts, tool.id).mean)} × the drops`,
          },
        ]}
        actions={
          <div className="cluster no-print">
            <ButtonLink href={`/fluid/${id}/label`}>Print the label</ButtonLink>
            <ButtonLink tone="quiet" href={`/tools/${id}`}>
              Issue, return or move it
            </ButtonLink>
          </div>
        }
      />
    </>
  );
}
