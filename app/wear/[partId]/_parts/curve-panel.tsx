import { WearCurveChart } from '@/app/_shared/charts/wear-curve-chart';
import { count, whole } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import type { WearCurve } from '@/lib/outlook/wear-curve';

interface CurvePanelProps {
  readonly curve: WearCurve;
  readonly noun: string;
  readonly connectionName: string;
}

/** The curve, with what it shows in a sentence. */
export function CurvePanel({ curve, noun, connectionName }: CurvePanelProps) {
  const worn = curve.lives.filter(({ end }) => end === 'worn').length;
  const log = curve.log.map(({ age, survival, atRisk, worn: wornHere }) => ({
    ends: age,
    share: survival,
    atRisk,
    worn: wornHere,
  }));
  const nine = lastAbove(curve.model, 0.9);
  const one = lastAbove(curve.model, 0.1);
  const summary =
    worn === 0
      ? `No edge of this part has worn out yet, so the curve is what was believed before. It has nine in ten still cutting at ${whole(nine)} ${noun} and one in ten at ${whole(one)}.`
      : `As estimated, nine in ten still cut at ${whole(nine)} ${noun} and one in ten at ${whole(one)}. Your own ${count(worn, 'edge')} that wore out should run near that line, and stray from it by chance.`;
  return (
    <Panel title="Share still cutting">
      <div className="stack">
        <WearCurveChart
          title="How long they last"
          summary={summary}
          model={curve.model}
          log={log}
          endsLabel={`${noun} of ${connectionName}`}
        />
        <p className="fine">
          Harder materials, dry cuts, recuts and regrinds are turned into {noun} of {connectionName} in the
          reference material by the factors estimated for them. Edges lost to accidents, taken out good or
          still cutting count up to what they had cut.
        </p>
      </div>
    </Panel>
  );
}

/** The last point of the curve at which at least this share still cuts. */
function lastAbove(model: WearCurve['model'], share: number): number {
  return model.filter(({ median }) => median >= share).at(-1)?.ends ?? 0;
}
