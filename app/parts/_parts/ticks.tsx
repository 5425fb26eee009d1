import type { Option } from '@/app/_shared/ui';

/** Several answers to tick. */
export function Ticks({
  legend,
  name,
  options,
  ticked,
}: {
  readonly legend: string;
  readonly name: string;
  readonly options: readonly Option[];
  readonly ticked: readonly string[];
}) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div className="cluster">
        {options.map(({ value, label }) => (
          <label key={value} className="check">
            <input type="checkbox" name={name} value={value} defaultChecked={ticked.includes(value)} />{' '}
            {label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
