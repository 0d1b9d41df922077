/** Margins: the indent of each line of a section, and which lines share columns. */
import type { Cells, Laid } from './cells.ts';

export interface Placed extends Laid {
  /** Spaces. */
  readonly margin: string;
  /** Lines of one group have their values in one column: 0, or the number of the trial whose row it is. */
  readonly group: number;
}

/** The lines with their margins, in order. */
export function placed(lines: readonly Laid[], indent: number): readonly Placed[] {
  const inside = insideTrials(lines);
  let trial = 0;
  return lines.map((line, i) => {
    if (line.cells?.trial === 'head') trial++;
    const depth = line.cells ? depthOf(line.cells, inside[i] as boolean) : 0;
    return { ...line, margin: ' '.repeat(depth * indent), group: line.cells?.trial === 'row' ? trial : 0 };
  });
}

const depthOf = ({ depth }: Cells, inside: boolean): number => (inside && depth > 0 ? 2 : depth);

/** What may come between the rows of a trial belongs to it as long as another row comes below. */
function insideTrials(lines: readonly Laid[]): readonly boolean[] {
  let rowBelow = false;
  return lines
    .toReversed()
    .map(({ cells }) => {
      if (cells && cells.trial !== 'between') rowBelow = cells.trial === 'row';
      return rowBelow && cells?.trial !== undefined;
    })
    .toReversed();
}
