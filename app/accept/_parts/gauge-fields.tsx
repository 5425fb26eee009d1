'use client';

import { useGivenBack } from '@/app/_shared/form/given-back';
import { CameraScan } from '@/app/_shared/scan/camera-scan';
import { Choice, Field, FieldError } from '@/app/_shared/ui';
import { ruleText } from '@/lib/acceptance/applied-rule';
import type { AppliedRule } from '@/lib/shop/acceptance';
import type { Role } from '@/lib/shop/vocabulary';
import { capital } from '@/lib/text/capital';
import styles from './accept.module.css';
import type { GaugeField } from './accept-view';
import type { GaugeIds, Seen } from './live-look';
import { Stepper } from './stepper';

interface GaugeFieldsProps {
  readonly seen: Seen;
  readonly set: (part: Partial<Seen>) => void;
  readonly gaugeIds: GaugeIds;
  readonly setGaugeIds: (ids: GaugeIds) => void;
  readonly gauges: readonly GaugeField[];
  readonly rule: AppliedRule | null;
}

const SAYS: Partial<Record<Role, { readonly pass: string; readonly fail: string }>> = {
  'go-ring': { pass: 'runs on', fail: 'will not run on' },
  'cone-gauge': { pass: 'fits', fail: 'does not fit' },
  'length-gauge': { pass: 'within', fail: 'too short or too long' },
};

/** From not at all to well beyond any rule, by half turns. */
const TURNS = ['', '0', '0.5', '1', '1.5', '2', '2.5', '3', '3.5', '4'].map((value) => ({
  value,
  label: value === '' ? 'not used' : value === '0' ? 'none' : value.replace('0.5', '½').replace('.5', '½'),
}));

/** Each gauge: which one, and what it says. The ones issued for the line are filled in; scanning replaces them. */
export function GaugeFields({ seen, set, gauges, rule, gaugeIds, setGaugeIds }: GaugeFieldsProps) {
  const { error } = useGivenBack({ name: 'gauges', start: undefined });
  const one = (gauge: GaugeField) => (
    <div className="stack">
      <Field
        name={`gauge-${gauge.role}`}
        label={capital(gauge.label)}
        hint={gauge.hint}
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        maxLength={40}
        value={gaugeIds[gauge.role] ?? ''}
        onChange={(event) => setGaugeIds({ ...gaugeIds, [gauge.role]: event.target.value })}
        onKeyDown={(event) => {
          // A hand scanner ends with Enter: it names the gauge and must not send the form.
          if (event.key === 'Enter') event.preventDefault();
        }}
      />
      <CameraScan
        label="Camera"
        purpose={`for the ${gauge.label}`}
        onScan={(text) => setGaugeIds({ ...gaugeIds, [gauge.role]: text })}
      />
      {gauge.role === 'not-go-ring' ? (
        <div className="stack-tight">
          <Stepper
            name="notGoTurns"
            label="Turns NOT GO ran on"
            options={TURNS}
            value={seen.notGoTurns}
            onChange={(notGoTurns) => set({ notGoTurns })}
          />
          <p className="quiet">
            {rule === null
              ? 'No rule is written down: nobody may assume one.'
              : `The rule: at most ${ruleText(rule)}.`}
          </p>
        </div>
      ) : (
        <Verdict gauge={gauge} seen={seen} set={set} />
      )}
    </div>
  );
  return (
    <div className={styles.gauges}>
      {gauges.map((gauge) =>
        gauge.role === 'length-gauge' ? (
          <details key={gauge.role}>
            <summary>{capital(gauge.label)} too</summary>
            {one(gauge)}
          </details>
        ) : (
          <div key={gauge.role}>{one(gauge)}</div>
        ),
      )}
      <FieldError id="gauges" error={error} />
    </div>
  );
}

function Verdict({
  gauge,
  seen,
  set,
}: Pick<GaugeFieldsProps, 'seen' | 'set'> & { readonly gauge: GaugeField }) {
  const { role, label } = gauge;
  const says = SAYS[role] ?? { pass: 'passed', fail: 'failed' };
  return (
    <div
      onChange={(event) =>
        set({ verdicts: { ...seen.verdicts, [role]: (event.target as HTMLInputElement).value } })
      }
    >
      <Choice
        name={`verdict-${role}`}
        legend={`The ${label}`}
        defaultValue={seen.verdicts[role]}
        options={[
          { value: 'pass', label: says.pass },
          { value: 'fail', label: says.fail },
          { value: 'not-used', label: 'not used' },
        ]}
      />
    </div>
  );
}
