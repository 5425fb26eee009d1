import { renderToStaticMarkup as html } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { TubeEnd } from '@/app/_shared/drawing/tube-end';
import { isLit, NAV } from '@/app/_shared/shell/nav';
import { parseTheme } from '@/app/_shared/shell/theme';
import { Choice } from '@/app/_shared/ui/choice';
import { Field, NumberField, Select } from '@/app/_shared/ui/field';
import { SizeText, ToolId } from '@/app/_shared/ui/frac';
import { LifeBand, lifeSentence } from '@/app/_shared/ui/life-band';
import { MARK_SHAPE } from '@/app/_shared/ui/mark-shapes';
import { FormMessage } from '@/app/_shared/ui/message';
import { Notice } from '@/app/_shared/ui/notice';
import { ComingMark, DieMark, StateMark, VerdictMark } from '@/app/_shared/ui/state-mark';
import { Table } from '@/app/_shared/ui/table';
import { TOOL_STATE_LABEL, TOOL_STATES } from '@/lib/shop/vocabulary';

/** What a screen reader is given: text outside aria-hidden parts. */
function spoken(markup: string): string {
  return markup
    .replace(/<(span|div|svg)[^>]*aria-hidden="true"[^>]*>.*?<\/\1>/g, '')
    .replace(/<[^>]+>/g, '')
    .trim();
}

const tube = {
  odIn: 0.5625,
  noseIn: 0.281,
  threadLengthIn: 0.9375,
  tpi: 18,
  hand: 'LH',
  service: 'high',
} as const;

// source: hand. What each part has to say follows from its own doc comment.
describe('sizes', () => {
  it('shows a true fraction and speaks it as words', () => {
    const markup = html(<SizeText odIn={0.5625} service="high" />);
    expect(markup).toContain('9\u204416');
    expect(spoken(markup)).toBe('9 sixteenths high pressure');
    expect(spoken(html(<SizeText odIn={1} unit />))).toBe('1 in');
  });
  it('keeps the text of an ID whole while slashing its zeros', () => {
    expect(html(<ToolId id="D-100-01" />).replace(/<[^>]+>/g, '')).toBe('D-100-01');
  });
});

describe('the tube end', () => {
  it('names size, pressure, hand and pitch, or hides when decorative', () => {
    const title = '9 sixteenths inch, high pressure, left hand thread, 18 threads per inch';
    expect(html(<TubeEnd {...tube} />)).toContain(`Tube end drawn to scale: ${title}</title>`);
    expect(html(<TubeEnd {...tube} decorative />)).toContain('aria-hidden="true"');
    expect(html(<TubeEnd {...tube} decorative />)).not.toContain('<title>');
  });
  // source: identity. One scale: the 1 in end view is four times as wide as the 1⁄4 in one.
  it('draws a 1 in tube four times as tall as a 1⁄4', () => {
    const radius = (odIn: number) =>
      Number(
        /<circle[^>]* r="([\d.]+)"/.exec(html(<TubeEnd {...tube} odIn={odIn} noseIn={odIn / 2} />))?.[1],
      );
    expect(radius(1)).toBeCloseTo(4 * radius(0.25), 9);
  });
  it('dimensions the drawing and asks for confirmation', () => {
    const drawing = html(<TubeEnd {...tube} view="drawing" />);
    for (const text of ['⌀ 9⁄16 in', '⌀ 0.281 in', '15⁄16 in', '9⁄16-18 LH', 'fitting maker’s manual'])
      expect(drawing).toContain(text);
    expect(html(<TubeEnd {...tube} view="drawing" unit="mm" />)).toContain('23.8 mm');
  });
});

describe('marks', () => {
  it('gives every tool state its own shape and its word', () => {
    const shapes = TOOL_STATES.map((state) => html(<g>{MARK_SHAPE[state]}</g>));
    expect(new Set(shapes).size).toBe(TOOL_STATES.length);
    for (const state of TOOL_STATES)
      expect(spoken(html(<StateMark state={state} />))).toBe(TOOL_STATE_LABEL[state]);
  });
  it('has one shape for every state and answer, and one for what is on its way', () => {
    const shapes = Object.values(MARK_SHAPE).map((shape) => html(<g>{shape}</g>));
    expect(new Set(shapes).size).toBe(shapes.length);
    expect(spoken(html(<ComingMark />))).toBe('coming');
    expect(spoken(html(<ComingMark>coming back</ComingMark>))).toBe('coming back');
  });
  it('is red only when it is told to be the alarm', () => {
    expect(html(<VerdictMark verdict="cannot-make-now" />)).not.toContain('alarm');
    expect(html(<VerdictMark verdict="cannot-make-now" alarm />)).toContain('data-tone="alarm"');
    expect(spoken(html(<DieMark verdict="go-with-standby" />))).toBe('go, with a standby');
  });
});

describe('the life band', () => {
  it('says in words what it draws, rounded down', () => {
    expect(lifeSentence({ low: 37.9, median: 83.4, high: 131, need: 24 })).toBe(
      '37 ends safe, 83 likely; about 1 in 10 goes past 130. This job needs 24.',
    );
    expect(lifeSentence({ low: 0.4, median: 8, high: 31 })).toBe(
      'No ends are sure, 8 likely; about 1 in 10 goes past 31.',
    );
    expect(lifeSentence({ low: 0, median: 0.9, high: Number.POSITIVE_INFINITY })).toBe(
      'No ends are sure, none likely.',
    );
    expect(lifeSentence({ low: Number.NaN, median: 3, high: 4 })).toBe('What is left is not known yet.');
  });
  it('hides the picture from screen readers, never the sentence', () => {
    expect(spoken(html(<LifeBand low={37} median={83} high={131} words="hidden" />))).toContain(
      '37 ends safe',
    );
  });
});

describe('form parts', () => {
  it('ties label, hint and error to the control', () => {
    const markup = html(<Field name="note" label="Note" hint="Short" error="Too long." />);
    expect(markup).toContain('for="f-note"');
    expect(markup).toContain('aria-describedby="f-note-error f-note-hint"');
    expect(markup).toContain('aria-invalid="true"');
    expect(markup).toContain('id="f-note-error"');
    expect(html(<Field name="note" label="Note" />)).not.toContain('aria-');
  });
  it('puts the unit inside the number field, fixed or to choose', () => {
    expect(html(<NumberField name="ends" label="Ends" unit="ends" />)).toContain(
      'aria-describedby="f-ends-unit"',
    );
    const units = {
      name: 'unit',
      options: [
        { value: 'in', label: 'in' },
        { value: 'mm', label: 'mm' },
      ],
      defaultValue: 'mm',
    };
    const markup = html(<NumberField name="length" label="Thread length" entry="fraction" units={units} />);
    expect(markup).toContain('aria-label="Unit of thread length"');
    expect(markup).toContain('<option value="mm" selected="">');
  });
  it('keeps the value that was typed', () => {
    const options = [
      { value: 'a', label: 'A' },
      { value: 'b', label: 'B' },
    ];
    expect(html(<Select name="s" label="S" options={options} defaultValue="b" />)).toContain(
      'value="b" selected=""',
    );
    expect(html(<Choice name="c" legend="C" options={options} defaultValue="b" />)).toMatch(
      /<input type="radio" name="c" checked="" value="b"\/>|value="b"[^>]*checked=""|checked=""[^>]*value="b"/,
    );
  });
  it('announces a refusal as an alert and success as a status; says nothing when empty', () => {
    expect(html(<FormMessage tone="refusal">No.</FormMessage>)).toContain('role="alert"');
    expect(html(<FormMessage tone="done">Saved.</FormMessage>)).toContain('role="status"');
    expect(html(<FormMessage tone="done" />)).toBe('');
  });
});

describe('tables, notices, navigation, theme', () => {
  it('labels every cell for the phone and keeps header scopes', () => {
    const columns = [
      { key: 'id', header: 'Tool', lead: true, cell: (row: { id: string; n: number }) => row.id },
      { key: 'n', header: 'Ends', numeric: true, cell: (row: { id: string; n: number }) => row.n },
    ];
    const markup = html(
      <Table caption="Dies" columns={columns} rows={[{ id: 'D-1', n: 3 }]} rowKey={(row) => row.id} />,
    );
    expect(markup).toContain('scope="row"');
    expect(markup).toContain('data-label="Ends"');
    const scrolling = html(
      <Table
        caption="Dies"
        columns={columns}
        rows={[{ id: 'D-1', n: 3 }]}
        rowKey={(row) => row.id}
        phone="scroll"
      />,
    );
    expect(scrolling).toContain('tabindex="0"');
    expect(
      html(
        <Table caption="Dies" columns={columns} rows={[]} rowKey={(row) => row.id} empty={<p>none yet</p>} />,
      ),
    ).toBe('<p>none yet</p>');
  });
  it('carries the signal word of its level', () => {
    expect(spoken(html(<Notice level="caution" title="Sharp." />))).toContain('CAUTION');
  });
  it('knows which page belongs under which tab', () => {
    const lit = (pathname: string) => NAV.filter((item) => isLit(pathname, item)).map(({ label }) => label);
    expect(lit('/tools/D-38-11')).toEqual(['Tools']);
    expect(lit('/')).toEqual(['Today']);
    expect(lit('/toolshed')).toEqual([]);
    expect(['/recalls/CG-38-1.R1', '/accept', '/calendar'].map(lit)).toEqual([
      ['Gauges'],
      ['Bench'],
      ['Plan'],
    ]);
  });
  it('follows the device for any theme that it does not know', () => {
    expect([parseTheme('dark'), parseTheme('sepia'), parseTheme(undefined)]).toEqual([
      'dark',
      'auto',
      'auto',
    ]);
  });
});
