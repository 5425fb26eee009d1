import type { EstimateReasons } from '@/lib/ensemble/reasons';
import type { LifeWarning } from '@/lib/life/life-fit';
import type { Finding } from '@/lib/reading/reading';
import type { EdgeKind } from '@/lib/shop/vocabulary';
import { capital } from '@/lib/text/capital';
import { count, timesText } from '../format';
import { findingWords } from './finding-words';

const NOUN: Record<EdgeKind, [one: string, many: string]> = {
  die: ['die', 'dies'],
  blade: ['blade edge', 'blade edges'],
};

const WARNING: Partial<Record<LifeWarning, string>> = {
  'no-worn-edges': 'none has worn out here yet, so the first guess still decides',
  'few-worn-edges': 'few have worn out here yet, so the first guess still counts',
  'default-life-used': 'no first guess was typed: a rough default from memory is used',
  'not-converged': 'the estimate did not settle; treat it as rough',
};

/** What an estimate rests on: "17 dies of this part worn out, 6 still cutting; 2507 counts 1.9×; last look: light wear." */
export function reasonSentence(reasons: EstimateReasons, materialName: string, lastLook?: Finding): string {
  const look = lastLook === undefined ? '' : `last look: ${findingWords(lastLook)}`;
  const parts = [evidence(reasons), material(reasons, materialName), look, ...warnings(reasons)];
  return `${capital(parts.filter((part) => part !== '').join('; '))}.`;
}

function evidence({ restsOn, kind, partCounts, kindCounts }: EstimateReasons): string {
  const [one, many] = NOUN[kind];
  const counts = restsOn === 'worn-of-part' ? partCounts : kindCounts;
  const whose =
    restsOn === 'worn-of-part' ? 'of this part ' : restsOn === 'worn-of-kind' ? 'of other parts ' : '';
  if (restsOn === 'default') return `from a rough default, 0 of your ${many} worn out yet`;
  if (counts.worn === 0) return `from the first guess typed for your shop, 0 of your ${many} worn out yet`;
  const incidents =
    counts.incident === 0 ? '' : `, ${counts.incident} lost to accidents (not counted as wear)`;
  const removed = counts.removedWorking === 0 ? '' : `, ${counts.removedWorking} taken out while good`;
  return `${count(counts.worn, one, many)} ${whose}worn out, ${counts.inService} still cutting${removed}${incidents}`;
}

function material({ materialFactor: factor }: EstimateReasons, name: string): string {
  if (factor === undefined) return '';
  return `${name} counts ${timesText(factor.median)} (${timesText(factor.low)} to ${timesText(factor.high)})`;
}

function warnings({ restsOn, warnings: all }: EstimateReasons): string[] {
  if (restsOn !== 'worn-of-part' && restsOn !== 'worn-of-kind') return [];
  return warningWords(all);
}

/** What a reader of a fit ought to know, in words; warnings that are nobody's concern are left out. */
export function warningWords(all: readonly LifeWarning[]): string[] {
  return all.flatMap((warning) => WARNING[warning] ?? []);
}
