/** Figures by topic, and the cautions for the work, as text for a person. */

import { widthOf } from '../../grammar/index.ts';
import type { FigureRow } from '../report/figure-rows.ts';
import type { CautionRow } from '../report/in-force.ts';
import { capital } from '../trade/measure/format.ts';
import { padded, visible, wrap } from './layout.ts';
import { narrower, rowLines, section, type TextPage } from './page-rows.ts';

/** A section for each topic; a caution that several figures share is shown with the first. */
export function figureSections(
  figures: readonly FigureRow[],
  page: TextPage,
): readonly (readonly string[])[] {
  const shown = new Set<string>();
  return [...new Set(figures.map(({ topic }) => topic))].map((topic) =>
    section(
      capital(topic),
      figures
        .filter((figure) => figure.topic === topic)
        .flatMap((figure) => figureLines(figure, shown, page)),
      page,
    ),
  );
}

export const cautionLines = (cautions: readonly CautionRow[], { columns }: TextPage): readonly string[] =>
  cautions.flatMap(({ work, text }) => wrap(`  ${work}: ${text}`, columns, 4));

function figureLines(figure: FigureRow, shown: Set<string>, page: TextPage): readonly string[] {
  const { name, value, formula, working, inputs, standing, source, caution, rows } = figure;
  const { columns, paint } = page;
  const indented = (text: string) => wrap(`    ${visible(text)}`, columns, 6);
  const isNew = caution !== undefined && !shown.has(caution);
  if (isNew) shown.add(caution);
  const [first = '', ...more] = wrap(`  ${visible(name)}  ${visible(value)}`, columns, 4);
  return [
    first.replace(visible(value), (text) => paint('strong', text)),
    ...more,
    ...(isNew ? indented(caution) : []),
    ...tableLines(rows, columns),
    ...indented(`= ${formula}`),
    ...(working === '' ? [] : indented(`= ${working}`)),
    ...indented(`${standing}: ${source}`).map((line) => paint('faint', line)),
    ...(inputs.length === 0 ? [] : rowLines(inputs, narrower(page)).map((line) => `  ${line}`)),
  ];
}

const GAP = '  ';

/** In columns where they fit, else one row after another, each cell after the name of its column. */
function tableLines(rows: FigureRow['rows'], columns: number | undefined): readonly string[] {
  const cells = rows.map((row) => row.map(visible));
  const [head, ...body] = cells;
  if (!head) return [];
  const widths = head.map((_, i) => Math.max(...cells.map((row) => widthOf(row[i] ?? ''))));
  const lines = cells.map((row) =>
    `    ${widths.map((width, i) => padded(row[i] ?? '', width)).join(GAP)}`.trimEnd(),
  );
  if (columns === undefined || lines.every((line) => widthOf(line) <= columns)) return lines;
  return body.flatMap((row) => wrap(`    ${besideHeads(head, row)}`, columns, 6));
}

const besideHeads = (head: readonly string[], row: readonly string[]): string =>
  row
    .map((cell, i) => (i === 0 || cell === '' ? cell : `${head[i]} ${cell}`))
    .filter((text) => text !== '')
    .join(', ');
