import { type Finding, GO_FEEL_LABEL, GRADE_LABEL } from '@/lib/reading/reading';
import { count } from '../format';

/** What was seen, with the figure as it was read. */
export function findingWords(finding: Finding): string {
  switch (finding.method) {
    case 'flank-land':
      return `wear land ${figure(finding.landMm)} mm`;
    case 'pitch-diameter':
      return `pitch diameter ${figure(finding.pitchDiameterMm)} mm${finding.overWires === undefined ? '' : `, ${figure(finding.overWires.overWiresMm)} mm over wires of ${figure(finding.overWires.wireMm)} mm`}`;
    case 'ring':
      return `GO ring ${GO_FEEL_LABEL[finding.go]}${finding.notGoTurns === null ? '' : `, NOT GO on by ${count(finding.notGoTurns, 'turn')}`}`;
    case 'grade':
      return GRADE_LABEL[finding.grade];
  }
}

/** At most three decimals: a length typed in inches carries a tail of no meaning. */
function figure(mm: number): string {
  return String(Number(mm.toFixed(3)));
}
