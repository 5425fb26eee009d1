/**
 * <Frac num={9} den={16} />          a true typographic fraction, read aloud as "9 sixteenths"
 * <SizeText odIn={0.5625} service="high" />   "9⁄16 high pressure"; `unit` adds "in"
 * <HandText hand="LH" />             "LH left hand": the letters and the words, always both
 * <ToolId id="D-38-11" />            slashed zeros (drawn: the font has none); wrap it in a link yourself
 */
import { HAND_LABEL, type Hand, SERVICE_LABEL, type Service } from '@/lib/shop/vocabulary';
import { fractionSpoken, inches, inchParts } from '../format';
import styles from './frac.module.css';

export function Frac({ num, den }: { readonly num: number; readonly den: number }) {
  return (
    <>
      <span className={styles.frac} aria-hidden="true">
        {`${num}\u2044${den}`}
      </span>
      <span className="vh">{fractionSpoken(num, den)}</span>
    </>
  );
}

interface SizeTextProps {
  readonly odIn: number;
  readonly service?: Service;
  readonly unit?: boolean;
}

export function SizeText({ odIn, service, unit = false }: SizeTextProps) {
  const parts = inchParts(odIn);
  return (
    <span className={styles.size}>
      <span className={styles.figure}>
        {parts && parts.num > 0 ? (
          <>
            {parts.whole > 0 ? `${parts.whole} ` : null}
            <Frac num={parts.num} den={parts.den} />
          </>
        ) : (
          inches(odIn)
        )}
        {unit ? ' in' : null}
      </span>
      {service ? ` ${SERVICE_LABEL[service]}` : null}
    </span>
  );
}

export function HandText({ hand }: { readonly hand: Hand }) {
  return (
    <span className={styles.hand}>
      <b>{hand}</b> {HAND_LABEL[hand]}
    </span>
  );
}

export function ToolId({ id }: { readonly id: string }) {
  return (
    <span className="id">
      {id.split(/(0)/).map((piece, at) =>
        piece === '0' ? (
          // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of one ID never change places
          <span key={at} className={styles.zero}>
            0
          </span>
        ) : (
          piece
        ),
      )}
    </span>
  );
}
