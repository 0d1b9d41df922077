/** What holds, as text for a person: one fact a line, each with the line of the notebook and the day it is from. */
import type { InForceReport, ItemRow, PartRow, SettingRow } from '../report/in-force.ts';
import type { TotalRow, TotalRows } from '../report/totals.ts';
import type { Where } from '../report/where.ts';
import { padded, visible, widthOf, wrap } from './layout.ts';
import { type Paint, painter } from './paint.ts';
import type { Terminal } from './terminal.ts';

interface Page {
  readonly paint: Paint;
  readonly columns: number | undefined;
}

/** A fact and where it stands; `name` is written in a column of its own. */
interface Row {
  readonly where: Where | undefined;
  readonly name: string;
  readonly value: string;
}

const CLOSING =
  "Worked out from what is written. The maker's figures, local law and a licensed mechanic overrule it.";

export function inForceText(report: InForceReport, { columns, colours }: Terminal): string {
  const page: Page = { paint: painter(colours), columns };
  const sections = [
    titleLines(report, page),
    ...settingSections(report, page),
    section('Totals', totalLines(report.totals, page), page),
    section('Open items', rowLines(report.items.map(itemRow), page), page),
    section('Before a road run', rowLines(checkRowsOf(report), page), page),
    section('To be rechecked', rowLines(report.rechecks, page), page),
    section('Limits', rowLines(report.limits, page), page),
    section('Targets', rowLines(report.targets, page), page),
    wrap(CLOSING, columns).map((line) => page.paint('faint', line)),
  ];
  return sections
    .filter((lines) => lines.length > 0)
    .map((lines) => `${lines.join('\n')}\n`)
    .join('\n');
}

function titleLines({ notebook, line, session, kept }: InForceReport, page: Page): readonly string[] {
  const name = notebook === '' ? 'Notebook without a title' : visible(notebook);
  const day = session ? `, session ${visible([session.date, session.title].filter(Boolean).join(' '))}` : '';
  const good = kept ? wrap(`Last marked to keep: ${whereWords(kept)}`, page.columns) : [];
  return [
    ...wrap(name, page.columns).map((text) => page.paint('title', text)),
    ...wrap(`In force after line ${line + 1}${day}`, page.columns),
    ...good,
  ];
}

const whereWords = ({ line, date }: Where): string =>
  [line === undefined ? 'a line that is gone' : `line ${line + 1}`, date].filter(Boolean).join(', ');

function section(title: string, lines: readonly string[], { paint }: Page): readonly string[] {
  return lines.length > 0 ? [paint('title', title), ...lines] : [];
}

/** The settings of each kind of part under its name, with the part that is fitted. */
function settingSections({ settings, parts }: InForceReport, page: Page): readonly (readonly string[])[] {
  if (settings.length + parts.length === 0) return [[page.paint('title', 'No settings written')]];
  const owners = [...new Set([...settings.map(({ owner }) => owner), ...parts.map(({ kind }) => kind)])];
  return owners.map((owner) => {
    const part = parts.find(({ kind }) => kind === owner);
    const own = settings.filter((setting) => setting.owner === owner);
    return section(capital(owner ?? 'other settings'), rowLines(ownerRows(part, own), page), page);
  });
}

const ownerRows = (part: PartRow | undefined, settings: readonly SettingRow[]): readonly Row[] =>
  part ? [partRow(part), ...settings] : settings;

const partRow = ({ name, text, where }: PartRow): Row => ({
  where,
  name: 'fitted',
  value: text === undefined ? name : `${name}, "${text}"`,
});

const itemRow = ({ word, id, text, safety, where }: ItemRow): Row => ({
  where,
  name: `${word} ${id}`,
  value: safety ? `${text} [safety]` : text,
});

const checkRowsOf = ({ checks }: InForceReport): readonly Row[] =>
  checks.map(({ name, state, why, where }) => ({
    where,
    name: `check ${name}`,
    value: [state === 'due' ? 'due since the work there' : 'found bad', why].filter(Boolean).join(': '),
  }));

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Line and day in a margin, then name and value in columns; a value that is too long goes on below itself. */
function rowLines(rows: readonly Row[], { paint, columns }: Page): readonly string[] {
  const margins = aligned(rows.map(({ where }) => marginParts(where)));
  const names = rows.map(({ name }) => visible(name));
  const before = 2 + Math.max(...margins.map(widthOf));
  const width = Math.max(...names.map(widthOf));
  return rows.flatMap(({ value }, i) => {
    const head = `  ${margins[i]}  ${padded(names[i] as string, width)}`;
    const [first = '', ...more] = besideOrBelow(head, visible(value), columns);
    return [paint('faint', first.slice(0, before)) + first.slice(before), ...more];
  });
}

/** The value in its column; below the name where it does not fit and its column would be too narrow to read. */
function besideOrBelow(head: string, value: string, columns: number | undefined): readonly string[] {
  const whole = `${head}  ${value}`;
  const column = widthOf(head) + 2;
  if (columns === undefined || widthOf(whole) <= columns) return [whole];
  if (columns - column >= LEAST_VALUE) return wrap(whole, columns, column);
  return [...wrap(head.trimEnd(), columns, BELOW.length), ...wrap(BELOW + value, columns, BELOW.length)];
}

/** A column of values narrower than this is harder to read than lines that begin further left. */
const LEAST_VALUE = 24;
const BELOW = '    ';

const marginParts = (where: Where | undefined): readonly [line: string, date: string] => [
  where?.line === undefined ? '' : `line ${where.line + 1}`,
  where?.date ?? '',
];

function aligned(pairs: readonly (readonly [string, string])[]): readonly string[] {
  const [first, second] = [0, 1].map((i) => Math.max(...pairs.map((pair) => widthOf(pair[i] as string))));
  return pairs.map(([a, b]) =>
    second === 0
      ? padded(a, first as number)
      : `${padded(a, first as number)}  ${padded(b, second as number)}`,
  );
}

function totalLines({ given, lacking }: TotalRows, page: Page): readonly string[] {
  return [
    ...given.flatMap((total) => oneTotal(total, page)),
    ...lacking.flatMap(({ name, lacks }) =>
      wrap(`  ${name}: cannot be worked out without ${lacks.join(' and ')}`, page.columns, 4),
    ),
  ];
}

function oneTotal({ name, value, formula, working, inputs }: TotalRow, page: Page): readonly string[] {
  const { paint, columns } = page;
  return [
    `  ${name}  ${paint('strong', value)}`,
    ...wrap(`    = ${formula}`, columns, 6),
    ...(working === value ? [] : wrap(`    = ${working}`, columns, 6)),
    ...rowLines(inputs, narrower(page)).map((line) => `  ${line}`),
  ];
}

const narrower = ({ paint, columns }: Page): Page => ({ paint, columns: columns && columns - 2 });
