/** Go to definition: the line that set, opened or declared the thing under the cursor; the file it names. */
import type { Position, Range } from '../../grammar/index.ts';
import type { Entry, Origin, QuantityEntry } from '../model/entry/entry.ts';
import { lineOf, lineStateAt } from '../model/snapshot/locate.ts';
import { type LineState, saidOn } from '../model/snapshot/page.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { isAbsent } from '../model/state/lookup.ts';
import { specFor } from '../model/state/spec-for.ts';
import type { State } from '../model/state/state.ts';
import { linksIn } from './document-links.ts';
import {
  isOf,
  type LocatedMention,
  mentionAt,
  mentionsIn,
  mentionsOf,
  type Subject,
  type SubjectKind,
} from './mentions.ts';
import { wholeLines } from './ranges.ts';

export interface Definition {
  /** What was asked about. */
  readonly asked: Range;
  /** Whole lines, in their order, each once. */
  readonly lines: readonly Range[];
  /** A file, by the path as written; inside it, where it is a notebook, what defines the subject. */
  readonly file: { readonly path: string; readonly subject: Subject | undefined } | undefined;
}

/** Undefined where there is nothing with a name. What comes from no other line comes from its own. */
export function definitionAt(snapshot: Snapshot, { line, character }: Position): Definition | undefined {
  const whole = lineStateAt(snapshot, line);
  const asked = mentionAt(snapshot, line, character);
  // A line that does not count is about what it names all the same.
  const reading =
    whole &&
    asked &&
    [...saidOn(whole), whole].find((said) => mentionsIn(said).some((each) => isOf(asked, each)));
  if (!reading) return undefined;
  const found = linesFor(snapshot, reading, asked);
  const lines = [...new Set(found.length > 0 ? found : [line])].sort((a, b) => a - b);
  return {
    asked: asked.range,
    lines: lines.map((each) => wholeLines(snapshot, each, each)),
    file: fileFor(snapshot, reading.entry, asked, lines),
  };
}

function linesFor(snapshot: Snapshot, reading: LineState, asked: LocatedMention): readonly number[] {
  const { entry, before } = reading;
  const at = (origins: readonly (Origin | undefined)[]) =>
    origins.flatMap((origin) => (origin && lineOf(snapshot, origin.ref)) ?? []);
  switch (entry.kind) {
    case 'setting':
      return at(isChange(entry) ? settings(before, entry.quantity.name) : []);
    case 'reading': {
      const held = at(heldTo(before, entry));
      return held.length > 0 ? held : definitions(snapshot, asked);
    }
    case 'item':
      return at(entry.word === 'done' ? [before.items.get(entry.id)?.by] : []);
    case 'fit':
      return at([before.parts.get(entry.name)?.by ?? fittedBy(before, entry.name)]);
    case 'port':
      return at([before.ports.get(entry.name)?.by]);
    case 'check':
      return at([before.checksDue.get(entry.name)]);
    case 'recheck':
      return at([before.items.get(entry.name)?.by ?? before.checksDue.get(entry.name)]);
    case 'revert':
      return definitions(snapshot, asked)
        .filter((line) => line < asked.at)
        .slice(-1);
    case 'trial':
      return at(settings(before, asked.name));
    default:
      return [];
  }
}

const isChange = ({ statements: said }: QuantityEntry): boolean =>
  said.some(({ values }) => values[0]?.form === 'amount' && values[0].relative !== undefined);

const settings = (state: State, name: string): readonly Origin[] =>
  [...state.settings.values()].filter(({ quantity }) => quantity.name === name).map(({ by }) => by);

/** A total is read off what these were set to. */
const BEHIND: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({ total: ['initial', 'mechanical'] }),
);

/** Settings behind a reading, and the limit, target and spec that apply to it. */
function heldTo(state: State, { quantity, statements: said }: QuantityEntry): readonly Origin[] {
  const stated = [state.limits, state.targets].flatMap((map) =>
    [...map.values()].filter((each) => each.quantity.name === quantity.name),
  );
  const specs = said.flatMap((each) => specFor(state.specs, quantity, each) ?? []);
  const behind = (BEHIND.get(quantity.name) ?? []).flatMap((name) => settings(state, name));
  return [...behind, ...[...stated, ...specs].map(({ by }) => by)];
}

const fittedBy = ({ fitted }: State, name: string): Origin | undefined =>
  [...fitted.values()].find((part) => part.name === name)?.by;

const definitions = (snapshot: Snapshot, subject: Subject): readonly number[] =>
  DEFINED.has(subject.of)
    ? mentionsOf(snapshot, subject)
        .filter(({ role }) => role === 'defines')
        .map(({ at }) => at)
    : [];

/** Of all else no line says what it is, and none need be looked for. */
const DEFINED: ReadonlySet<SubjectKind> = new Set(['word', 'part', 'item', 'session']);

/** A file's line names its own file; what a `use` line brought in is in the file that it names. */
function fileFor(
  snapshot: Snapshot,
  entry: Entry,
  asked: LocatedMention,
  lines: readonly number[],
): Definition['file'] {
  if (entry.kind === 'file') return { path: entry.path, subject: undefined };
  for (const line of lines) {
    const from = lineStateAt(snapshot, line)?.entry;
    if (from?.kind === 'file' && from.word === 'use') return { path: from.path, subject: asked };
  }
  if (asked.of !== 'word' || definitions(snapshot, asked).length > 0) return undefined;
  const path = pathGiving(snapshot, asked);
  return path === undefined ? undefined : { path, subject: asked };
}

/** The notebook that gave a word: of several, the last one used above has the last word. */
const pathGiving = (snapshot: Snapshot, { name, at }: LocatedMention): string | undefined =>
  linksIn(snapshot).findLast(({ word, path, range }) => {
    const found = word === 'use' && range.start.line < at ? snapshot.shared(path, 'notebook') : undefined;
    return found && !isAbsent(found) && found.words.has(name);
  })?.path;
