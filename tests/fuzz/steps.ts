/** What people do to a text: typed keys, pastes, deletions, lines joined and parted, sessions moved, all of it undone. */
import fc from 'fast-check';
import { cutLines, type Position } from '../../grammar/index.ts';
import type { Change } from '../../server/model/snapshot/snapshot.ts';
import { bookLine, bookLines, section } from './books.ts';

/** Lines and columns beyond the end count from the start again, so that a step can be taken in any text. */
export type Step =
  | { readonly act: 'type' | 'replace'; readonly at: number; readonly text: string }
  | { readonly act: 'join' | 'undo'; readonly at: number }
  | { readonly act: 'part'; readonly at: number; readonly column: number }
  | { readonly act: 'paste'; readonly at: number; readonly lines: readonly string[] }
  | { readonly act: 'take'; readonly at: number; readonly count: number }
  | { readonly act: 'move'; readonly at: number; readonly count: number; readonly to: number }
  | { readonly act: 'cross'; readonly at: number; readonly column: number; readonly down: number };

const at = fc.nat({ max: 120 });
const column = fc.nat({ max: 30 });
const lines = fc.oneof(section, bookLines);
const of = <Act extends Step['act']>(act: Act) => fc.constant(act);

export const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 1, arbitrary: fc.record({ act: of('type'), at, text: bookLine }) },
  { weight: 4, arbitrary: fc.record({ act: of('replace'), at, text: bookLine }) },
  { weight: 2, arbitrary: fc.record({ act: of('join'), at }) },
  { weight: 2, arbitrary: fc.record({ act: of('undo'), at }) },
  { weight: 2, arbitrary: fc.record({ act: of('part'), at, column }) },
  { weight: 4, arbitrary: fc.record({ act: of('paste'), at, lines }) },
  { weight: 3, arbitrary: fc.record({ act: of('take'), at, count: fc.integer({ min: 1, max: 15 }) }) },
  {
    weight: 3,
    arbitrary: fc.record({ act: of('move'), at, count: fc.integer({ min: 1, max: 15 }), to: at }),
  },
  { weight: 1, arbitrary: fc.record({ act: of('cross'), at, column, down: fc.nat({ max: 4 }) }) },
);

/** The changes of a step, each of the text after the one before. `past`: the texts before, the latest last. */
export function changesOf(step: Step, text: string, past: readonly string[]): readonly Change[] {
  const all = cutLines(text);
  const line = step.at % all.length;
  const start = { line, character: 0 };
  const end = { line, character: (all[line] ?? '').length };
  switch (step.act) {
    case 'type':
      return [
        put(start, start, '\n'),
        ...[...step.text].map((key, i) => put({ line, character: i }, { line, character: i }, key)),
      ];
    case 'replace':
      return [put(start, end, `${step.text}\n`)];
    case 'join':
      return [put(end, { line: line + 1, character: 0 }, '')];
    case 'part': {
      const there = { line, character: step.column % (end.character + 1) };
      return [put(there, there, '\n')];
    }
    case 'paste':
      return [put(start, start, step.lines.map((each) => `${each}\n`).join(''))];
    case 'take':
      return [put(start, { line: line + step.count, character: 0 }, '')];
    case 'move':
      return moved(all, line, step.count, step.to);
    case 'cross': {
      const from = { line, character: step.column };
      return [put(from, { line: line + step.down, character: step.column + 1 }, '')];
    }
    case 'undo':
      return undone(text, past[past.length - 1 - (step.at % (past.length + 1))] ?? text);
  }
}

const put = (start: Position, end: Position, text: string): Change => ({ range: { start, end }, text });

/** Cut out, and pasted elsewhere. */
function moved(all: readonly string[], line: number, count: number, to: number): readonly Change[] {
  const cut = all.slice(line, line + count);
  const there = { line: to % Math.max(1, all.length - cut.length), character: 0 };
  return [
    put({ line, character: 0 }, { line: line + count, character: 0 }, ''),
    put(there, there, `${cut.join('')}\n`),
  ];
}

/** The lines in which an earlier text differs, put back. */
function undone(text: string, earlier: string): readonly Change[] {
  const [now, then] = [cutLines(text), cutLines(earlier)];
  const most = Math.min(now.length, then.length);
  let above = 0;
  while (above < most - 1 && now[above] === then[above]) above++;
  let below = 0;
  while (below < most - 1 - above && now.at(-1 - below) === then.at(-1 - below)) below++;
  const end = now.length - below;
  const stop =
    below > 0 ? { line: end, character: 0 } : { line: end - 1, character: (now.at(-1) ?? '').length };
  return [put({ line: above, character: 0 }, stop, then.slice(above, then.length - below).join(''))];
}
