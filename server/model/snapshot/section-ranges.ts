/** The sections of a notebook as stretches of lines; sessions among them with their dates. */

import { withoutBreak } from '../../../grammar/index.ts';
import { once } from '../../memo.ts';
import type { Entry, SectionKind } from '../entry/entry.ts';
import { entryOfLine } from '../spoken/line-entry.ts';
import type { State } from '../state/state.ts';
import { lineOf } from './locate.ts';
import type { Page } from './page.ts';
import { linesOf, pageAt, type Snapshot } from './snapshot.ts';

export interface SectionRange {
  readonly kind: SectionKind;
  readonly title: string;
  /** ISO date of a session, as written. */
  readonly date: string | undefined;
  readonly clock: string | undefined;
  /** Line of its head, from zero. */
  readonly from: number;
  /** The line after its last. */
  readonly to: number;
  /** Its pages in the snapshot: from the first to before `pagesTo`. */
  readonly pagesFrom: number;
  readonly pagesTo: number;
}

/** Every section from its head to the next. Lines before the first head belong to none. Reads only the heads. */
export function stretchesOf(snapshot: Snapshot): readonly SectionRange[] {
  const stretches: SectionRange[] = [];
  for (const [i, page] of snapshot.pages.entries()) {
    const head = headOf(page);
    const from = snapshot.starts[i] as number;
    const to = snapshot.starts[i + 1] as number;
    const last = stretches.at(-1);
    if (head) stretches.push({ ...head, from, to, pagesFrom: i, pagesTo: i + 1 });
    else if (last) stretches[stretches.length - 1] = { ...last, to, pagesTo: i + 1 };
  }
  return stretches;
}

/** In the order of their lines. */
export const sessionsOf = (snapshot: Snapshot): readonly SectionRange[] =>
  stretchesOf(snapshot).filter((stretch) => stretch.kind === 'session');

/** Pages by their numbers: from the first to before `to`. */
interface Pages {
  readonly from: number;
  readonly to: number;
}

/**
 * The pages of the section of a line, and of each one above, the nearest first. Where pages end within a section depends on
 * how the text was typed, so anything about a section must cover all its pages. Lines before the first head are
 * one too.
 */
export function* sectionsUpFrom(snapshot: Snapshot, line: number): Generator<Pages> {
  let from = pageAt(snapshot, line);
  let to = sectionEnd(snapshot, from);
  for (; to > 0; from--) {
    if (from > 0 && !isHeaded(snapshot, from)) continue;
    yield { from, to };
    to = from;
  }
}

/** The pages of the section of a line. */
export const pagesOfSession = (snapshot: Snapshot, line: number): Pages =>
  sectionsUpFrom(snapshot, line).next().value as Pages;

/** What holds at the end of the section of a line. */
export const stateAtSectionEnd = (snapshot: Snapshot, line: number): State =>
  (snapshot.pages[sectionEnd(snapshot, pageAt(snapshot, line)) - 1] as Page).after;

/** Line of the head of the session a state is in; undefined outside sessions. */
export const sessionHead = (snapshot: Snapshot, { session }: State): number | undefined =>
  session && lineOf(snapshot, session.by.ref);

/** The page after the last one of the section of a page. */
export function sectionEnd(snapshot: Snapshot, page: number): number {
  let to = page + 1;
  while (to < snapshot.pages.length && !isHeaded(snapshot, to)) to++;
  return to;
}

const isHeaded = ({ pages }: Snapshot, page: number): boolean => headOf(pages[page] as Page) !== undefined;

type Head = Pick<SectionRange, 'kind' | 'title' | 'date' | 'clock'>;

/** Memo by page: after a keystroke all pages but one are unchanged. */
const headOf = once((page: Page): Head | undefined => headIn(page));

const headIn = (page: Page): Head | undefined =>
  headOfEntry(entryOfLine(withoutBreak(firstLine(page)), page.before));

function headOfEntry(entry: Entry): Head | undefined {
  switch (entry.kind) {
    case 'section':
      return { kind: entry.section, title: entry.title, date: undefined, clock: undefined };
    case 'session': {
      const { title, dateText, clock } = entry;
      return { kind: 'session', title, date: dateText?.text, clock };
    }
    case 'spoken':
      return entry.entries.map(headOfEntry).find((head) => head !== undefined);
    case 'asked':
      return (
        entry.head && { kind: 'session', title: entry.line.text.trim(), date: undefined, clock: undefined }
      );
    default:
      return undefined;
  }
}

const firstLine = (page: Page): string => linesOf(page).lines[0] ?? '';
