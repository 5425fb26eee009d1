import type { ReactNode } from 'react';
import { Button, Panel } from '@/app/_shared/ui';
import { jobOptions } from '@/app/plan/jobs/_parts/job-options';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import type { Change, ChangeKind } from '@/lib/what-if/change';
import { changeText } from '@/lib/what-if/change-text';
import { firstOf } from './asked-changes';
import { DateFields, NewLineFields, SelectField, WholeField } from './change-fields';
import { lineOptions, orderOptions, partOptions, toolOptions } from './change-options';
import styles from './what-if.module.css';

interface ChangeFormsProps {
  readonly facts: ShopFacts;
  readonly changes: readonly Change[];
  readonly asked: Readonly<Record<string, string | string[] | undefined>>;
}

/** One small form for every kind of change. GET forms: they work without script, and the address keeps the question. */
export function ChangeForms({ facts, changes, asked }: ChangeFormsProps) {
  const typed = (name: string): string => firstOf(asked[name]) ?? '';
  const { connections, materials } = jobOptions(facts);
  const lines = lineOptions(facts);
  const tools = toolOptions(facts);
  const [tool, line, order] = [typed('toolId'), typed('lineId'), typed('orderId')];
  const openKind = typed('add') || (tool ? 'lose-tool' : order ? 'slip-order' : line ? 'change-dates' : '');
  const shared = { changes, openKind };
  const lineField = (kind: ChangeKind) => (
    <SelectField id={`${kind}-line`} name="lineId" label="Line" options={lines} value={line} />
  );
  return (
    <div className={styles.forms}>
      <Panel title={changes.length === 0 ? 'Try a change' : 'Try another change with it'}>
        <div className={styles.kinds}>
          <ChangeForm kind="add-line" title="A job comes in" {...shared}>
            <NewLineFields facts={facts} connections={connections} materials={materials} typed={typed} />
          </ChangeForm>
          <ChangeForm kind="slip-order" title="An order slips" {...shared}>
            <SelectField
              id="slip-order-order"
              name="orderId"
              label="Order"
              options={orderOptions(facts)}
              value={order}
            />
            <WholeField
              id="slip-order-days"
              name="days"
              label="Later by"
              unit="days"
              value={typed('days') || '21'}
            />
          </ChangeForm>
          <ChangeForm kind="lose-tool" title="A tool is lost or broken" {...shared}>
            <SelectField id="lose-tool-tool" name="toolId" label="Tool" options={tools} value={tool} />
          </ChangeForm>
          <ChangeForm kind="change-dates" title="A line starts or is due on other days" {...shared}>
            {lineField('change-dates')}
            <DateFields id="change-dates" facts={facts} lineId={line} typed={typed} />
          </ChangeForm>
          <ChangeForm kind="change-material" title="A line is cut in another material" {...shared}>
            {lineField('change-material')}
            <SelectField
              id="change-material-m"
              name="materialId"
              label="Material"
              options={materials}
              value={typed('materialId')}
            />
          </ChangeForm>
          <ChangeForm kind="change-ends" title="A line has more ends, or fewer" {...shared}>
            {lineField('change-ends')}
            <WholeField
              id="change-ends-ends"
              name="ends"
              label="Ends in all"
              unit="ends"
              value={typed('ends')}
            />
          </ChangeForm>
          <ChangeForm kind="drop-line" title="A job is cancelled" {...shared}>
            {lineField('drop-line')}
          </ChangeForm>
          <ChangeForm kind="add-order" title="We order more" {...shared}>
            <SelectField
              id="add-order-part"
              name="partId"
              label="Part"
              options={partOptions(facts)}
              value={typed('partId')}
            />
            <WholeField
              id="add-order-quantity"
              name="quantity"
              label="How many"
              unit="pieces"
              value={typed('quantity') || '1'}
            />
            <DateFields id="add-order" facts={facts} lineId="" typed={typed} promised />
          </ChangeForm>
          <ChangeForm kind="add-tool" title="We had one more in the crib" {...shared}>
            <SelectField
              id="add-tool-part"
              name="partId"
              label="Part"
              options={partOptions(facts)}
              value={typed('partId')}
            />
            <WholeField
              id="add-tool-quantity"
              name="quantity"
              label="How many"
              unit="pieces"
              value={typed('quantity') || '1'}
            />
          </ChangeForm>
          <ChangeForm kind="add-bench" title="An extra bench" {...shared}>
            <WholeField
              id="add-bench-quantity"
              name="quantity"
              label="Benches"
              unit="more"
              value={typed('quantity') || '1'}
            />
          </ChangeForm>
        </div>
      </Panel>
    </div>
  );
}

interface ChangeFormProps {
  readonly kind: ChangeKind;
  readonly title: string;
  readonly openKind: string;
  readonly changes: readonly Change[];
  readonly children: ReactNode;
}

function ChangeForm({ kind, title, openKind, changes, children }: ChangeFormProps) {
  return (
    <details className={styles.kind} open={openKind === kind} id={kind}>
      <summary>{title}</summary>
      <form action="/plan/what-if" className={styles.form}>
        {changes.map((change, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same change may be tried twice
          <input key={`${at} ${change.kind}`} type="hidden" name="c" value={changeText(change)} />
        ))}
        <input type="hidden" name="add" value={kind} />
        <div className="columns">{children}</div>
        <div>
          <Button
            type="submit"
            tone={openKind === kind ? 'primary' : 'quiet'}
            aria-label={`Try it: ${title}`}
          >
            Try it
          </Button>
        </div>
      </form>
    </details>
  );
}
