/** Check before a rename: reads the lines again with the new name and compares what they mean. */

import type { Interruptible } from '../../model/snapshot/interruptible.ts';
import { lineCount } from '../../model/snapshot/locate.ts';
import { lookUpAbove, type Shared } from '../../model/snapshot/look-up.ts';
import { type LineState, lineStates, type Page } from '../../model/snapshot/page.ts';
import { keptByPage } from '../../model/snapshot/per-page.ts';
import { readAs } from '../../model/snapshot/reread.ts';
import { linesOf, pageAt, type Snapshot } from '../../model/snapshot/snapshot.ts';
import { givenOf, stateGiven } from '../../model/snapshot/used-notebooks.ts';
import { kindOfPart } from '../../model/state/fitted-parts.ts';
import type { State } from '../../model/state/state.ts';
import { isOf, type LocatedMention, mentionsIn } from '../mentions.ts';

interface Renamed {
  /** All there are, in the order of lines. */
  readonly mentions: readonly LocatedMention[];
  /** As it will be written, and as it will be known by. */
  readonly text: string;
  readonly name: string;
  /** What other notebooks will give. */
  readonly shared: Shared;
}

/**
 * Read again, the notebook must say what it said, of the same lines. A page a step.
 * @returns what it gives to others then; why it would not say the same, where it would not.
 */
export function* readAgain(snapshot: Snapshot, renamed: Renamed): Interruptible<State | string> {
  const { mentions, name } = renamed;
  const naming = (reading: LineState) =>
    mentionsIn(reading).filter((mention) => isOf({ of: mentions[0]?.of ?? 'word', name }, mention));
  const namedAt: number[] = [];
  let given = stateGiven(snapshot);
  for (const [index, read] of pagesToRead(snapshot, renamed)) {
    const start = snapshot.starts[index] as number;
    const forms = formsOn(snapshot, index);
    for (const [i, reading] of read.entries()) {
      const because = whyNot(forms[i] as string, formOf(reading), start + i);
      if (because) return because;
      for (const _ of naming(reading)) namedAt.push(start + i);
    }
    const last = index === snapshot.pages.length - 1 ? read.at(-1) : undefined;
    if (last) given = givenOf(last.after);
    yield;
  }
  const isSame = namedAt.join() === mentions.map(({ at }) => at).join();
  return isSame ? given : 'it already means something else here';
}

type PageRead = readonly [index: number, readings: readonly LineState[]];

/** Words are known by their names on every line below; parts and items only where they are named. */
const pagesToRead = (snapshot: Snapshot, renamed: Renamed): Iterable<PageRead> =>
  renamed.mentions[0] && renamed.mentions[0].of !== 'word'
    ? namingPages(snapshot, renamed)
    : pagesBelow(snapshot, renamed);

/** How any other line reads hangs on its section, on words and on specs alone (law 3). */
function* namingPages(snapshot: Snapshot, renamed: Renamed): Generator<PageRead> {
  const linesAt = renamedLines(snapshot, renamed);
  for (const index of new Set(renamed.mentions.map(({ at }) => pageAt(snapshot, at)))) {
    const { id, lineIds, before } = snapshot.pages[index] as Page;
    const lines = linesAt(index);
    const from = { id, text: lines.join(''), lines, lineIds };
    yield [index, lineStates(from, withPart(before, renamed), lookUpAbove(snapshot, index))];
  }
}

/** A part that is declared is known by its new name from there on. */
function withPart(state: State, { mentions, name }: Renamed): State {
  const [first] = mentions;
  if (first?.of !== 'part') return state;
  const named = [...state.parts].map(([key, part]) => [key === first.name ? name : key, part] as const);
  return { ...state, parts: new Map(named) };
}

function* pagesBelow(snapshot: Snapshot, renamed: Renamed): Generator<PageRead> {
  const { mentions, shared } = renamed;
  const isAsBefore = shared === snapshot.shared;
  let index = isAsBefore ? pageAt(snapshot, mentions[0]?.at ?? lineCount(snapshot)) : 0;
  for (const read of readAs(snapshot, index, renamedLines(snapshot, renamed), shared)) yield [index++, read];
}

/** The lines of a page with the new name in the place of the mentions. */
function renamedLines(snapshot: Snapshot, { mentions, text }: Renamed): (page: number) => readonly string[] {
  const byPage = new Map<number, LocatedMention[]>();
  for (const mention of mentions) {
    const page = pageAt(snapshot, mention.at);
    byPage.set(page, [...(byPage.get(page) ?? []), mention]);
  }
  return (index) => {
    const lines = [...linesOf(snapshot.pages[index] as Page).lines];
    // From the end, so that columns before a mention stay what they are.
    for (const { at, span } of (byPage.get(index) ?? []).toReversed()) {
      const line = at - (snapshot.starts[index] as number);
      const old = lines[line] as string;
      lines[line] = old.slice(0, span.from) + text + old.slice(span.to);
    }
    return lines;
  };
}

/** The kind of each line's entry, and of the part that it names. */
const formsOn = keptByPage((readings) => readings.map(formOf));

function formOf({ entry, before }: LineState): string {
  const part =
    entry.kind === 'part' ? entry.part : entry.kind === 'fit' ? kindOfPart(before, entry.name) : undefined;
  return part ? `${entry.kind} ${part}` : entry.kind;
}

function whyNot(was: string, is: string, at: number): string | undefined {
  if (was === is) return undefined;
  const [[kind, ...part], [otherKind, ...otherPart]] = [was.split(' '), is.split(' ')];
  if (otherPart.join(' ') !== part.join(' '))
    return otherPart.length > 0
      ? `it would be read as a ${otherPart.join(' ')}`
      : `the name must say that it is a ${part.join(' ')}`;
  return kind === otherKind ? undefined : `line ${at + 1} would be read as something else`;
}
