/** The little Markdown that answers are written in. */

const SIGNS = /[\\`*_{}[\]<>#~|&]/g;

/** Text of the notebook or the tables, so that none of its signs is taken for Markdown. */
export const plain = (text: string): string => text.replace(SIGNS, '\\$&');

export const strong = (text: string): string => `**${plain(text)}**`;

/** Lines that stay lines: Markdown would run them together. */
export const stacked = (lines: readonly string[]): string => lines.join('  \n');

/** Blocks with a gap between them; empty ones are left out. */
export const blocks = (parts: readonly string[]): string => parts.filter((part) => part !== '').join('\n\n');

/** For readers that show no Markdown. */
export const withoutMarkdown = (markdown: string): string =>
  markdown
    .replace(/ {2}\n/g, '\n')
    .replace(/(?<!\\)\*\*/g, '')
    .replace(/\\([\\`*_{}[\]<>#~|&])/g, '$1');
