/**
 * The shared parts of every screen. Import from here: `import { Panel, Table } from '@/app/_shared/ui'`.
 * All are server components unless marked (client). Words and numbers come ready from '@/app/_shared/format', the only
 * place that rounds. Each file documents its parts at the top; this is the list.
 *
 * PAGE
 *   <div className="page"> Breadcrumb?, TitleBlock, then Panels; inside them .stack, .columns, .columns-lead, .cluster.
 *   The shell already gives <main>, header, find box, navigation, footer with the standing cautions: a page starts at
 *   TitleBlock, which holds the only <h1>; Panel titles are h2 (level 3 inside a panel). Add .bench beside .page where
 *   gloves are worn. `export const metadata = { title: 'Plan' }` gives "Plan · Edgekeep".
 *
 * HEAD AND FRAME
 *   TitleBlock   { title, lead?, cells?: { label, value }[], drawing?, actions? }
 *   Breadcrumb   { trail: { href, label }[], here }
 *   Panel        { title?, level? 2|3, aside?, id?, children }
 *   KeyValue     { items: { label, value }[] }
 *   Figure       { value, unit?, note? }                 one big figure
 *   EmptyState   { title, action?, children }            says what to do next
 *   ProgressBar  { label, value?, max?, note? }
 *   Table<Row>   { caption, captionShown?, columns: { key, header, cell(row), numeric?, lead? }[], rows, rowKey(row),
 *                  phone? 'cards'|'scroll', empty? }     `cell` is a function: call Table from a server component
 *
 * SIZE, ID, STATE
 *   TubeEnd      { odIn, noseIn, boreIn?, threadLengthIn, tpi, hand, service, coneAngleDeg? 59, pxPerIn? 44|112,
 *                  view? 'mark'|'drawing', unit? 'in'|'mm', framed?, decorative? }
 *   SizeText     { odIn, service?, unit? }      Frac { num, den }      HandText { hand }      ToolId { id }
 *   StateMark    { state: ToolState, size? 'm'|'l', children? }
 *   VerdictMark  { verdict: 'can-make'|'at-risk'|'cannot-make-now', alarm?, size?, children? }
 *   DieMark      { verdict: 'go'|'go-with-standby'|'swap', alarm?, size?, children? }
 *   One `alarm` per screen: the costliest item to ignore. Nothing else is red.
 *
 * ESTIMATES
 *   LifeBand     { low, median, high, need?, max?, noun? 'end', words? 'shown'|'hidden' }   low: 9 in 10 last longer
 *   lifeSentence { low, median, high, need?, noun? } => string
 *   WearCurveChart, ReliabilityChart (client; import them from '@/app/_shared/charts/…', so that pages without a chart
 *                  carry none): ready series in, nothing computed; the figures also stand in a table
 *
 * FORMS (work without script; inside an EntryForm each part gives back what was typed and shows its own error: `answers` names
 *   the fields of a refusal that are answered there besides its own name)
 *   Field        { name, label, hint?, error?, optional?, id?, ...input props }
 *   TextArea     { name, label, hint?, error?, optional?, id?, ...textarea props }
 *   Select       { name, label, options: { value, label, disabled? }[], placeholder?, hint?, error?, optional?, ... }
 *   NumberField  { name, label, entry? 'whole'|'decimal'|'fraction', unit? | units?: { name, options, defaultValue? },
 *                  hint?, error?, optional?, ...input props }
 *   Choice       { name, legend, options: { value, label, note?, mark?, disabled? }[], defaultValue?, hint?, error?,
 *                  required?, id? }                        large radio tiles
 *   SubmitButton (client) { tone? 'primary'|'quiet', pendingText?, name?, value?, formAction?, children }
 *   Button       { tone?, ...button props }               ButtonLink { href, tone?, ...link props }
 *   FormMessage  { tone: 'refusal'|'done', children? }    alert, status; renders nothing when empty
 *   FieldFrame, FieldError, wiring(id, hint, error)       to frame a control of one's own
 *
 * CAUTIONS
 *   Notice       { level: 'danger'|'warning'|'caution'|'notice', title, sign?: SignName, children? }
 *   SafetySign   { name: SignName, size? 48 }
 *
 * TOKENS for a page's own CSS module: --desk --sheet --sheet-sunk (papers), --ink --ink-2 --ink-3 --on-ink (writing),
 *   --line --line-strong --steel --steel-pale, --verdigris(-pale) --ochre(-pale) (state, never safety), --text-xs … -3xl,
 *   --s1 … --s8, --radius, --hairline --rule (borders), --target --target-gap. Never write a colour in a page.
 */
export { TubeEnd, type TubeEndProps } from '../drawing/tube-end';
export { Button, ButtonLink, type ButtonTone } from './button';
export * from './choice';
export * from './field';
export { FieldError, FieldFrame, wiring } from './field-frame';
export * from './frac';
export * from './life-band';
export * from './message';
export * from './notice';
export * from './panel';
export { SafetySign, type SignName } from './safety-sign';
export * from './state-mark';
export * from './submit-button';
export * from './table';
export * from './title-block';
