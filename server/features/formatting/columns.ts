/** Column layout of a section, and its lines laid out in it. */
import { LONGEST_LINE, widthOf } from '../../../grammar/index.ts';
import type { Cells, Laid } from './cells.ts';
import { sameTokens } from './edits.ts';
import { type Placed, placed } from './margins.ts';

/** Spaces between two columns. */
const GAP = 2;
/** Shorter names leave the column where it is: sections line up with each other, and a new name moves no other line. */
const NARROWEST_NAME = 15;
/** Longest name the column makes room for; a longer one sticks out rather than moving all others. */
const WIDEST_NAME = 24;
/** Longest line for comments and sources to line up behind; a longer one does not move the others. */
const WIDEST_LINE = 72;

type Chosen = (at: number) => boolean;

/** The texts of the lines of one section, laid out where `chosen`, else unchanged. */
export function laidOut(lines: readonly Laid[], indent: number, chosen: Chosen): readonly string[] {
  const known = placed(lines, indent);
  const columns = groupsOf(known).map((group) => valueColumn(group, chosen));
  const values = known.map((line) => content(line, columns[line.group] as number));
  const sources = columnAfter(values, known, chosen, ({ sourceToken }) => sourceToken);
  const contents = known.map(({ cells }, i) => withSource(cells, values[i] as string, sources));
  const comments = columnAfter(contents, known, chosen, commentOf);
  return known.map(({ at, text, cells, margin }, i) => {
    if (!cells || !chosen(at)) return text;
    const laid = withComment(cells, margin, contents[i] as string, comments);
    return laid.length <= LONGEST_LINE && sameTokens(cells.line.text, laid) ? laid : text;
  });
}

function groupsOf(lines: readonly Placed[]): readonly (readonly Placed[])[] {
  const groups: Placed[][] = [];
  for (const line of lines) {
    for (let group = groups.length; group <= line.group; group++) groups.push([]);
    groups[line.group]?.push(line);
  }
  return groups;
}

function content({ cells, margin }: Placed, column: number): string {
  if (!cells || cells.lead === '') return '';
  const lead = margin + cells.lead;
  return cells.body === '' ? lead : padded(lead, column) + cells.body;
}

const withSource = (cells: Cells | undefined, content: string, column: number): string =>
  cells?.source ? padded(content, column) + cells.source : content;

function withComment({ comment }: Cells, margin: string, content: string, column: number): string {
  if (comment === '') return content;
  return (content === '' ? margin : padded(content, column)) + comment;
}

const padded = (text: string, column: number): string =>
  text + ' '.repeat(Math.max(GAP, column - widthOf(text)));

/** A time takes room that a name does not need, so lines with one follow the others. */
function valueColumn(lines: readonly Placed[], chosen: Chosen): number {
  const filled = lines.filter(({ cells }) => cells?.body);
  const isTrial = lines.some(({ group }) => group > 0);
  const untimed = filled.filter(({ cells }) => !cells?.timed);
  const widths = (untimed.length > 0 ? untimed : filled).flatMap(({ cells, margin }) => {
    const width = Math.max(widthOf(cells?.lead ?? ''), isTrial ? 0 : NARROWEST_NAME);
    return width <= WIDEST_NAME ? [margin.length + width] : [];
  });
  return keptTo(lines, chosen, ({ cells }) => cells?.bodyToken) ?? Math.max(0, ...widths) + GAP;
}

const commentOf = ({ lead, line }: Cells): number | undefined => (lead ? line.comment : undefined);

/** Column for what begins with the token of `tokenOf`, after the contents of all lines that have one. */
function columnAfter(
  contents: readonly string[],
  lines: readonly Placed[],
  chosen: Chosen,
  tokenOf: (cells: Cells) => number | undefined,
): number {
  const tokenIn = ({ cells }: Placed) => cells && tokenOf(cells);
  const widths = contents.flatMap((content, i) => {
    const width = tokenIn(lines[i] as Placed) === undefined ? Infinity : widthOf(content);
    return width <= WIDEST_LINE ? [width] : [];
  });
  return keptTo(lines, chosen, tokenIn) ?? Math.max(0, ...widths) + GAP;
}

/** The column that most lines which are not to be changed have already, if two or more of them agree. */
function keptTo(
  lines: readonly Placed[],
  chosen: Chosen,
  tokenOf: (line: Placed) => number | undefined,
): number | undefined {
  const counts = new Map<number, number>();
  for (const line of lines) {
    const column = chosen(line.at) ? undefined : standingAt(line, tokenOf(line));
    if (column !== undefined) counts.set(column, (counts.get(column) ?? 0) + 1);
  }
  const [most] = [...counts].filter(([, count]) => count > 1).sort((a, b) => b[1] - a[1]);
  return most?.[0];
}

/** Undefined where no gap sets it apart as a column. */
function standingAt({ cells, text }: Placed, token: number | undefined): number | undefined {
  if (!cells || token === undefined || cells.line.text !== text) return undefined;
  const before = text.slice(0, cells.line.tokens.starts[token]);
  return before.endsWith(' '.repeat(GAP)) ? widthOf(before) : undefined;
}
