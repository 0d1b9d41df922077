/** A comparison as a page to read, in Markdown. */
import type { ComparedRow, Comparison } from './comparison.ts';

/** Only what differs; a part of the page in which nothing does is left out. */
export function comparisonText(comparison: Comparison): string {
  const { notebook, before, after, settings, totals, readings, opened, done } = comparison;
  const blocks = [
    `# ${[notebook, `${after} against ${before}`].filter(Boolean).map(plain).join(': ')}`,
    settings.length > 0 ? table('Settings', settings) : 'All settings are the same.',
    table('Totals', totals),
    table('Readings under the same conditions', readings),
    list('Opened since', opened),
    list('Done since', done),
  ];
  return `${blocks.filter(Boolean).join('\n\n')}\n`;
}

/** Table with aligned columns, so that it reads as plain text too. */
function table(title: string, rows: readonly ComparedRow[]): string {
  if (rows.length === 0) return '';
  const cells = rows.map(({ name, before, after, change }) => [name, before, after, change].map(cell));
  const lines = [['', 'before', 'after', 'change'], ...cells];
  const widths = [0, 1, 2, 3].map((column) =>
    Math.max(3, ...lines.map((line) => (line[column] ?? '').length)),
  );
  const [head, ...body] = lines.map((line) => rowOf(line.map((text, i) => text.padEnd(widths[i] ?? 0))));
  return [`## ${title}`, '', head, rowOf(widths.map((width) => '-'.repeat(width))), ...body].join('\n');
}

const rowOf = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

const list = (title: string, items: readonly string[]): string =>
  items.length === 0 ? '' : [`## ${title}`, '', ...items.map((item) => `- ${plain(item)}`)].join('\n');

const cell = (text: string | undefined): string => (text === undefined ? '-' : plain(text));

/** Escapes the notebook's text, so that none of it is taken for Markdown. */
const plain = (text: string): string => text.replace(/[\\`*_{}[\]<>#~|&]/g, '\\$&');
