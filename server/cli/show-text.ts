/** The state as text for a person: one fact a line, each with the line of the notebook and the day it is from. */
import type { FigureRow, TotalRows } from '../report/figure-rows.ts';
import type { InForceReport, ItemRow, PartRow, SettingRow } from '../report/in-force.ts';
import type { ChangeRow } from '../report/since-kept.ts';
import type { Where } from '../report/where.ts';
import { capital } from '../trade/measure/format.ts';
import { visible, wrap } from './layout.ts';
import { narrower, type PageRow, rowLines, section, type TextPage } from './page-rows.ts';
import { painter } from './paint.ts';
import { cautionLines, figureSections } from './show-figures.ts';
import type { Terminal } from './terminal.ts';

const CLOSING =
  "Worked out from this notebook. The maker's figures, local law and a licensed mechanic overrule it.";

export function inForceText(report: InForceReport, { columns, colours }: Terminal): string {
  const page: TextPage = { paint: painter(colours), columns };
  const sections = [
    titleLines(report, page),
    ...settingSections(report, page),
    section('Changed since the last keep', rowLines(report.sinceKept.map(changeRow), page), page),
    section('Totals', totalLines(report.totals, page), page),
    section('Open items', rowLines(report.items.map(itemRow), page), page),
    section('Before a road run', rowLines(checkRowsOf(report), page), page),
    section('To be rechecked', rowLines(report.rechecks, page), page),
    section('Limits', rowLines(report.limits, page), page),
    section('Targets', rowLines(report.targets, page), page),
    ...figureSections(report.figures, page),
    section('Cautions', cautionLines(report.cautions, page), page),
    wrap(CLOSING, columns).map((line) => page.paint('faint', line)),
  ];
  return sections
    .filter((lines) => lines.length > 0)
    .map((lines) => `${lines.join('\n')}\n`)
    .join('\n');
}

function titleLines({ notebook, line, session, kept }: InForceReport, page: TextPage): readonly string[] {
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
  [line === undefined ? 'a deleted line' : `line ${line + 1}`, date].filter(Boolean).join(', ');

/** The settings of each kind of part under its name, with the part that is fitted. */
function settingSections({ settings, parts }: InForceReport, page: TextPage): readonly (readonly string[])[] {
  if (settings.length + parts.length === 0) return [[page.paint('title', 'No settings written')]];
  const owners = [...new Set([...settings.map(({ owner }) => owner), ...parts.map(({ kind }) => kind)])];
  return owners.map((owner) => {
    const part = parts.find(({ kind }) => kind === owner);
    const own = settings.filter((setting) => setting.owner === owner);
    return section(capital(owner ?? 'other settings'), rowLines(ownerRows(part, own), page), page);
  });
}

const ownerRows = (part: PartRow | undefined, settings: readonly SettingRow[]): readonly PageRow[] =>
  part ? [partRow(part), ...settings] : settings;

const partRow = ({ name, text, where }: PartRow): PageRow => ({
  where,
  name: 'fitted',
  value: text === undefined ? name : `${name}, "${text}"`,
});

/** An item named by its own text is shown once. */
const itemRow = ({ word, id, text, safety, where }: ItemRow): PageRow => ({
  where,
  name: id === text.toLowerCase() ? word : `${word} ${id}`,
  value: safety ? `${text} [safety]` : text,
});

const changeRow = ({ name, before, after, change, where }: ChangeRow): PageRow => ({
  where,
  name,
  value: `${before ?? 'not written'} -> ${after ?? 'not written'}${change ? `, ${change}` : ''}`,
});

const checkRowsOf = ({ checks }: InForceReport): readonly PageRow[] =>
  checks.map(({ name, state, why, where }) => ({
    where,
    name: `check ${name}`,
    value: [state === 'due' ? 'due after the work there' : 'found bad', why].filter(Boolean).join(': '),
  }));

function totalLines({ given, lacking }: TotalRows, page: TextPage): readonly string[] {
  return [
    ...given.flatMap((total) => oneTotal(total, page)),
    ...lacking.flatMap(({ name, lacks }) => wrap(`  ${name}: needs ${lacks.join(' and ')}`, page.columns, 4)),
  ];
}

function oneTotal({ name, value, formula, working, inputs }: FigureRow, page: TextPage): readonly string[] {
  const { paint, columns } = page;
  return [
    `  ${name}  ${paint('strong', value)}`,
    ...wrap(`    = ${formula}`, columns, 6),
    ...(working === value ? [] : wrap(`    = ${working}`, columns, 6)),
    ...rowLines(inputs, narrower(page)).map((line) => `  ${line}`),
  ];
}
