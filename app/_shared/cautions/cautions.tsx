/**
 * <Cautions at="accept" />: the cautions of one place (lib/cautions), put where the hand is about to do the thing.
 * What has a signal word stands in a signal panel, the rest in short lines with their signs. `only` picks some by ID where
 * a screen has room for no more; `signals="hidden"` drops the panels' colour where the screen's one red is already spent.
 */
import { Notice, SafetySign } from '@/app/_shared/ui';
import { type Caution, type CautionPlace, cautionsAt } from '@/lib/cautions';
import styles from './cautions.module.css';
import { SIGN_OF_CODE } from './sign-of-code';

interface CautionsProps {
  readonly at: CautionPlace;
  readonly only?: readonly string[];
  readonly signals?: 'shown' | 'hidden';
}

export function Cautions({ at, only, signals = 'shown' }: CautionsProps) {
  const cautions = cautionsAt(at).filter(({ id }) => only === undefined || only.includes(id));
  const panels = signals === 'shown' ? cautions.filter(({ signal }) => signal !== null) : [];
  const lines = cautions.filter((caution) => !panels.includes(caution));
  if (cautions.length === 0) return null;
  return (
    <div className={styles.cautions}>
      {panels.map(({ id, signal, sign, lead, text }) =>
        signal === null ? null : (
          <Notice key={id} level={signal} title={lead} sign={sign === null ? undefined : SIGN_OF_CODE[sign]}>
            {text}
          </Notice>
        ),
      )}
      {lines.length === 0 ? null : (
        <ul className={styles.lines}>
          {lines.map((caution) => (
            <CautionLine key={caution.id} caution={caution} />
          ))}
        </ul>
      )}
    </div>
  );
}

function CautionLine({ caution: { signal, sign, lead, text } }: { readonly caution: Caution }) {
  return (
    <li className={styles.line}>
      <span className={styles.sign}>
        {sign === null ? null : <SafetySign name={SIGN_OF_CODE[sign]} size={32} />}
      </span>
      <p>
        {signal === null ? null : <strong>{signal.toUpperCase()}: </strong>}
        <strong>{lead}</strong> {text}
      </p>
    </li>
  );
}
