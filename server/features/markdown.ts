/** Markdown helpers. */

const SIGNS = /[\\`*_{}[\]<>#~|&]/g;

/** Text of the notebook or the tables, escaped so that none of it is taken for Markdown. */
export const plain = (text: string): string => text.replace(SIGNS, '\\$&');

export const strong = (text: string): string => `**${plain(text)}**`;

/** Lines that stay lines: Markdown would run them together. */
export const stacked = (lines: readonly string[]): string => lines.join('  \n');

/** Blocks with a gap between them; empty ones are left out. */
export const blocks = (parts: readonly string[]): string => parts.filter((part) => part !== '').join('\n\n');

/** The first row names the columns; beyond `most` rows the last one says how many there are. */
export function table(rows: readonly (readonly string[])[], most: number): string {
  const [head, ...body] = rows.map((row) => `| ${row.map(plain).join(' | ')} |`);
  if (head === undefined || body.length === 0) return '';
  const rule = `|${' --- |'.repeat(rows[0]?.length ?? 0)}`;
  const left = body.length > most ? [`| ${body.length - most} more |`] : [];
  return [head, rule, ...body.slice(0, most), ...left].join('\n');
}

/** Plain text, for editors that show no Markdown. */
export const withoutMarkdown = (markdown: string): string =>
  markdown
    .replace(/^\|(?: --- \|)+\n/gm, '')
    .replace(/ {2}\n/g, '\n')
    .replace(/(?<!\\)\*\*/g, '')
    .replace(/\\([\\`*_{}[\]<>#~|&])/g, '$1');
