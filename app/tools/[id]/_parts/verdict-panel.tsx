import { chanceWords, count, floorEnds, percent } from '@/app/_shared/format';
import { DieMark, Figure, LifeBand, Panel, VerdictMark } from '@/app/_shared/ui';
import { materialWords } from '@/app/_shared/words/material-words';
import { reasonSentence } from '@/app/_shared/words/reason-words';
import { dieVerdict } from '@/lib/outlook/die-verdict';
import type { Outlook } from '@/lib/outlook/outlook';
import { requiredProbability } from '@/lib/outlook/plan-facts';
import { connectionText } from '@/lib/shop/connection-text';
import { capital } from '@/lib/text/capital';
import type { CutInHand } from './cut-in-hand';
import { SureChoice } from './sure-choice';

/** What the tool has left, in ends of what is about to be cut: the verdict first, then the band, then why. */
export function VerdictPanel({
  outlook,
  toolId,
  cut,
  sure,
  barred,
}: {
  outlook: Outlook;
  toolId: string;
  cut: CutInHand;
  /** How sure safe ends are to be, where it was asked for; else as sure as the work in hand has to be. */
  sure?: number | undefined;
  /** Why it may not be put to work as it stands; then no word says go, and the figures are for when it may. */
  barred: string | undefined;
}) {
  const asked = { connectionId: cut.connection.id, materialId: cut.material.id };
  const forecast = outlook.forecast(toolId, asked);
  if (forecast === undefined) return null;
  const required = requiredProbability(outlook.facts.shop, cut.line?.value ?? 'ordinary');
  const confidence = sure ?? required;
  const safe = forecast.safeEndsAt(confidence);
  const probability = cut.ends === undefined ? undefined : forecast.probabilityFinishes(cut.ends);
  const verdict = probability === undefined ? undefined : dieVerdict({ probability, required });
  const what = `${connectionText(cut.connection)} in ${materialWords(cut.material)}`;
  return (
    <Panel title="What it has left" aside={what}>
      <div className="stack">
        {barred === undefined ? null : (
          <p>
            <VerdictMark verdict="cannot-make-now" size="l">
              not to be used now
            </VerdictMark>
            <br />
            {capital(barred)}. The figures are for when it may be used again.
          </p>
        )}
        {verdict && barred === undefined ? (
          <DieMark verdict={verdict} size="l" alarm={verdict === 'swap'} />
        ) : null}
        <Figure
          value={safe === 0 ? 'No end is safe' : `${count(floorEnds(safe), 'end')} safe`}
          note={
            <>
              at {percent(confidence)}, {floorEnds(forecast.likelyEnds)} likely
              {cut.ends !== undefined && probability !== undefined
                ? `. ${cut.line ? `Job ${cut.line.id}` : 'This work'} needs ${cut.ends}: ${chanceWords(probability)} that it finishes, ${percent(required)} is asked for.`
                : '.'}
            </>
          }
        />
        <LifeBand
          low={Math.min(safe, forecast.likelyEnds)}
          median={forecast.likelyEnds}
          high={forecast.highEnds}
          need={cut.ends}
          words="hidden"
        />
        <SureChoice toolId={toolId} cut={cut} confidence={confidence} required={required} />
        <p className="quiet">
          {reasonSentence(forecast.reasons, materialWords(cut.material), forecast.lastLook)}
        </p>
        {forecast.startKnown ? null : (
          <p className="quiet">
            Nobody knows what it had cut before it was entered here: the figures above count only what was
            logged since.
          </p>
        )}
        <p className="fine">
          An estimate from counts. It does not replace looking at the edge, the gauge or the drawing.
        </p>
      </div>
    </Panel>
  );
}
