'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { useLastSending } from '@/app/_shared/form/given-back';
import { Choice, Field, Select, SubmitButton, TextArea } from '@/app/_shared/ui';
import { GhsPictogram } from '@/app/_shared/ui/ghs-pictogram';
import { type FluidLot, SHELF_LIFE_LABEL, SHELF_LIVES } from '@/lib/shop/fluid-lot';
import { GHS_PICTOGRAMS, type GhsCode } from '@/lib/shop/ghs';
import { setLotAction } from '../../actions';

interface LotFormProps {
  readonly toolId: string;
  readonly partId: string;
  readonly lot: string;
  readonly facts: FluidLot | null;
  readonly stamp: EntryStamp;
}

/** A field of the form by its name in the record, starting with what is written down. */
const wires = (name: keyof FluidLot & string, start: string) => ({
  name,
  id: `lot-${name}`,
  defaultValue: start,
});

/** What came with the lot: its sheet, the supplier's answer, what its label says. Copied from the sheet, never guessed. */
export function LotForm({ toolId, partId, lot, facts, stamp }: LotFormProps) {
  return (
    <EntryForm action={setLotAction} stamp={stamp} label="Lot">
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="partId" value={partId} />
      {lot === '' ? (
        <Field {...wires('lot', '')} label="Lot number" required maxLength={60} />
      ) : (
        <input type="hidden" name="lot" value={lot} />
      )}
      <SheetFields facts={facts} />
      <HazardFields facts={facts} />
      <RegisterFields facts={facts} />
      <div>
        <SubmitButton>Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}

interface PartProps {
  readonly facts: FluidLot | null;
}

function SheetFields({ facts }: PartProps) {
  return (
    <div className="columns">
      <Field
        {...wires('productIdentifier', facts?.productIdentifier ?? '')}
        label="Product identifier"
        hint="As on the SDS"
        maxLength={100}
      />
      <Field {...wires('sdsRevision', facts?.sdsRevision ?? '')} label="SDS revision" maxLength={40} />
      <Field {...wires('sdsOnDay', facts?.sdsOnDay ?? '')} label="SDS of" type="date" />
      <Field {...wires('sdsKeptAt', facts?.sdsKeptAt ?? '')} label="SDS is kept at" maxLength={100} />
      <Select
        {...wires('chlorinated', facts?.chlorinated ?? 'unknown')}
        label="Contains chlorinated paraffins"
        options={[
          { value: 'unknown', label: 'not known: ask the supplier' },
          { value: 'no', label: 'no, says the supplier' },
          { value: 'yes', label: 'yes' },
        ]}
      />
      <Field
        {...wires('supplierAnswer', facts?.supplierAnswer ?? '')}
        label="Who answered, and when"
        maxLength={200}
      />
      <Select
        {...wires('shelfLife', facts?.shelfLife ?? 'fixed')}
        label="Shelf life"
        options={SHELF_LIVES.map((life) => ({ value: life, label: SHELF_LIFE_LABEL[life] }))}
      />
    </div>
  );
}

function HazardFields({ facts }: PartProps) {
  const sending = useLastSending();
  const isTicked = (code: GhsCode) =>
    sending.status === 'refused'
      ? `pictogram-${code}` in sending.values
      : (facts?.pictograms.includes(code) ?? false);
  return (
    <>
      <Choice
        {...wires('signal', facts?.signal ?? '')}
        legend="Signal word on the SDS"
        options={[
          { value: '', label: 'not written down' },
          { value: 'warning', label: 'Warning' },
          { value: 'danger', label: 'Danger' },
          { value: 'none', label: 'no signal word' },
        ]}
      />
      <fieldset>
        <legend>Pictograms on the SDS</legend>
        <div className="cluster">
          {GHS_PICTOGRAMS.map(({ code, name }) => (
            <label key={code} className="check">
              <input type="checkbox" name={`pictogram-${code}`} defaultChecked={isTicked(code)} />
              <GhsPictogram code={code} size={32} /> {name}
            </label>
          ))}
        </div>
      </fieldset>
      <TextArea
        {...wires('hazards', facts?.hazards.join('\n') ?? '')}
        label="Hazard statements"
        hint="One to a line, in the words of the SDS. Left empty, the label says that they are not written down"
        rows={3}
      />
    </>
  );
}

function RegisterFields({ facts }: PartProps) {
  return (
    <details>
      <summary>For the chemical register</summary>
      <div className="columns">
        <Field {...wires('usedAt', facts?.usedAt ?? '')} label="Where it is used" maxLength={160} />
        <Field {...wires('storage', facts?.storage ?? '')} label="Storage" maxLength={200} />
        <Field {...wires('firstAid', facts?.firstAid ?? '')} label="First aid" maxLength={400} />
        <Field {...wires('disposal', facts?.disposal ?? '')} label="Disposal" maxLength={200} />
        <Field {...wires('reviewOnDay', facts?.reviewOnDay ?? '')} label="Review on" type="date" />
      </div>
    </details>
  );
}
