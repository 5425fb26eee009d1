import { Button, NumberField, Select, TextArea } from '@/app/_shared/ui';
import type { ToolRow } from '@/db/queries/tools';
import { CODE_KIND_LABEL, CODE_KIND_USE, CODE_KINDS } from '@/lib/labels/code-kind';
import { LABEL_STOCKS, labelsPerPage } from '@/lib/labels/label-stock';
import { ROLE_LABEL, ROLES } from '@/lib/shop/vocabulary';
import type { LabelQuestion } from './label-question';

/** Which tools, on what, with which code. A GET form: scanning fills the list, and the address can be kept. */
export function LabelForm({
  question,
  listed,
}: {
  readonly question: LabelQuestion;
  /** Tools of the chosen kind, to tick. */
  readonly listed: readonly ToolRow[];
}) {
  const { stock, codeKind, firstPlace, role, ids } = question;
  const chosen = new Set(ids);
  return (
    <form action="/labels" className="stack" aria-label="Labels">
      <div className="columns">
        <TextArea
          name="ids"
          label="Tools"
          hint="Scan one after another, or type an ID on each line"
          rows={5}
          defaultValue={ids.join('\n')}
        />
        <div className="stack">
          <Select
            name="stock"
            label="Printed on"
            defaultValue={stock.id}
            options={LABEL_STOCKS.map(({ id, name }) => ({ value: id, label: name }))}
          />
          <Select
            name="code"
            label="Code"
            defaultValue={codeKind}
            options={CODE_KINDS.map((kind) => ({
              value: kind,
              label: `${CODE_KIND_LABEL[kind]}: ${CODE_KIND_USE[kind]}`,
            }))}
          />
          <NumberField
            name="first"
            label="First free place on the sheet"
            hint={`1 to ${labelsPerPage(stock)}, row by row`}
            defaultValue={String(firstPlace)}
          />
          <Select
            name="kind"
            label="Tick from a list"
            placeholder="No list"
            defaultValue={role}
            options={ROLES.map((kind) => ({ value: kind, label: ROLE_LABEL[kind] }))}
          />
        </div>
      </div>
      {listed.length > 0 ? (
        <fieldset>
          <legend>{ROLE_LABEL[listed[0]?.role ?? 'die']}: tick what needs a label</legend>
          <div className="cluster">
            {listed
              .filter(({ id }) => !chosen.has(id))
              .map(({ id }) => (
                <label key={id} className="check">
                  <input type="checkbox" name="id" value={id} /> {id}
                </label>
              ))}
          </div>
        </fieldset>
      ) : null}
      <div>
        <Button type="submit" tone="primary">
          Show the labels
        </Button>
      </div>
    </form>
  );
}
