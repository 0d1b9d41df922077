/** Summary of a log file by speed band, beside the settings in force when it was taken. */

import { once } from '../../memo.ts';
import type { FileText } from '../../model/snapshot/named-files.ts';
import type { FileProblem } from '../../model/state/lookup.ts';
import { settingText } from '../../model/state/setting-text.ts';
import type { SettingInForce } from '../../model/state/state.ts';
import { range } from '../../trade/measure/interval.ts';
import { faultText, type LogTable, readLog } from '../../trade/sums/log-table.ts';
import type { LogColumn } from '../../trade/sums/logger.ts';
import { type Figure, type FigureContext, figure, type Input, type Working } from '../figure.ts';
import { inWords } from '../inputs.ts';
import { bandRows, bandsOf, extremes, headOf } from './log-bands.ts';
import { type LogLine, logLinesAt } from './log-lines.ts';

export const LOGS: Working = { topic: 'road', about: ['log'], work: logs };

/** Paths of the logs that the figures here need, as the notebook writes them. */
export const logsWanted = (moment: FigureContext, word?: string): readonly string[] =>
  word === undefined || word === 'log'
    ? [...new Set(logLinesAt(moment.snapshot, moment.line, word).map(({ path }) => path))]
    : [];

/** On a log's own line that log, else those of the latest session that has any; none for files that were not read. */
function logs(moment: FigureContext, word?: string): readonly Figure[] {
  const { files, snapshot, line } = moment;
  if (!files) return [];
  return logLinesAt(snapshot, line, word).flatMap((log) => {
    const file = files.get(log.path);
    return file ? [logFigure(log, file)] : [];
  });
}

/** Memo by the file's text, so that a log of twenty megabytes is parsed once. */
const tableOf = once(
  (file: FileText): ReturnType<typeof readLog> =>
    'problem' in file ? { problem: PROBLEMS[file.problem] } : readLog(file.text),
);

const PROBLEMS: Readonly<Record<FileProblem, string>> = {
  missing: 'file not found',
  'too large': 'it is larger than 20 MB; cut it down to the runs that matter',
  outside: "it is outside the notebook's folder; put it beside the notebook",
  'not text': 'it is not UTF-8 text',
  'not readable': 'it could not be read',
};

const BANDS = {
  topic: 'road',
  standing: 'published',
  source: "the logger's own file; the mean of what fell into each band",
} as const;

function logFigure(log: LogLine, file: FileText): Figure {
  const table = tableOf(file);
  const name = `log ${log.path}`;
  const input: Input = { name: 'log', value: log.path, by: log.by };
  if ('problem' in table)
    return figure({
      ...BANDS,
      name,
      text: `Can't be summarised: ${table.problem}`,
      formula: 'mean in each speed band',
      working: table.problem,
      inputs: [input],
    });
  const bands = bandsOf(table);
  return figure({
    ...BANDS,
    name,
    text: `${summary(table)}${faultText(table)}${unreadText(table)}`,
    formula: bands ? `mean (lowest..highest) in each ${bands.column.name} band` : 'mean (lowest..highest)',
    working: `${table.rows} lines, ${table.columns.map(({ heading, name: known, unit }) => `"${heading.trim()}" as ${headOf({ name: known, unit })}`).join(', ')}`,
    inputs: [input, ...settingInputs(log)],
    caution: 'Read logs at home, or let a passenger watch: never while driving.',
    rows: bandRows(table, bands, log.state),
  });
}

/** Parts whose settings matter for a run. */
const OWNERS: ReadonlySet<SettingInForce['quantity']['owner']> = new Set([
  'carburettor',
  'distributor',
  'fuel system',
  'blower',
  'plugs',
]);

const settingInputs = ({ state }: LogLine): readonly Input[] =>
  [...state.settings.values()]
    .filter(({ quantity }) => OWNERS.has(quantity.owner))
    .map((setting) => ({
      name: [setting.quantity.name, setting.place].filter(Boolean).join(' '),
      value: settingText(setting),
      by: setting.by,
    }));

function summary({ columns, values, rows }: LogTable): string {
  const spans = columns.flatMap((column, i) => {
    const known = (values[i] ?? []).filter((n) => !Number.isNaN(n));
    return known.length > 0 ? [`${column.name} ${spanText(known, column)}`] : [];
  });
  return [`${rows} ${rows === 1 ? 'line' : 'lines'}`, ...spans].join(', ');
}

function spanText(numbers: readonly number[], { unit }: LogColumn): string {
  const { least, most } = extremes(numbers);
  return inWords(range(least, most), unit.id);
}

function unreadText({ unread }: LogTable): string {
  if (unread.length === 0) return '';
  const listed = unread.slice(0, 6).map(({ heading, why }) => `"${heading.trim()}" (${why})`);
  return `; not used: ${listed.join(', ')}${unread.length > 6 ? ` and ${unread.length - 6} more` : ''}`;
}
