/** Completion: suggestions for what may be written next. */
import { KIND, type Position, parseLine, tokenSpan } from '../../grammar/index.ts';
import type { Entry } from '../model/entry/entry.ts';
import { readEntry } from '../model/entry/read-entry.ts';
import { findingsIn, lineStateAt } from '../model/snapshot/locate.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { RULES } from '../rules/check.ts';
import { nameOffers } from './completion/names.ts';
import { folderParts, pathBegun, pathOffers } from './completion/paths.ts';
import { normal } from './completion/phrase.ts';
import type { CompletionContext, CompletionQuestion, Offer, Suggestion } from './completion/suggestion.ts';
import { allUnits, timeUnits } from './completion/units.ts';
import { valueOffers } from './completion/values.ts';
import {
  checkOffers,
  fitOffers,
  itemOffers,
  recheckOffers,
  revertOffers,
  rowOffers,
  sessionOffers,
  trialOffers,
} from './completion/work-lines.ts';
import { onLine } from './ranges.ts';

export type {
  CompletionContext as Around,
  FolderEntry,
  Suggestion,
  SuggestionKind,
} from './completion/suggestion.ts';

/**
 * The likeliest first, of those that begin with what is typed and would change it. None inside prose, quotes and comments,
 * but for the codes of a comment that begins `; meant:`.
 */
export function suggestionsAt(
  snapshot: Snapshot,
  position: Position,
  around: CompletionContext,
): readonly Suggestion[] {
  const question = questionAt(snapshot, position, around);
  if (!question) return [];
  const text = question.written.text + question.typed + question.rest;
  const offers = offersFor(question).filter((offer) =>
    goesOnFrom(text.slice(offer.from, position.character), offer),
  );
  return withoutDoubles(offers).map(({ from, to = question.to, ...offer }) => ({
    ...offer,
    range: onLine(question.line, { from, to: Math.max(to, position.character) }),
  }));
}

/** A value in force may also be one of the words that its setting takes. */
function withoutDoubles(offers: readonly Offer[]): readonly Offer[] {
  const first = new Map(offers.toReversed().map((offer) => [`${offer.from} ${offer.text}`, offer]));
  return offers.filter((offer) => first.get(`${offer.from} ${offer.text}`) === offer);
}

/** Begun, and not whole yet, in whatever capitals. An editor left to sift the list itself also finds letters in the middle of words. */
const goesOnFrom = (typed: string, { label, text, foundBy = label }: Offer): boolean =>
  text.toLowerCase() !== typed.toLowerCase() && normal(foundBy).startsWith(normal(typed.trimStart()));

/** The folder whose files `suggestionsAt` would offer there, as parts below the notebook's own; undefined where none. */
export function folderWanted(
  snapshot: Snapshot,
  { line, character }: Position,
): readonly string[] | undefined {
  const text = lineStateAt(snapshot, line)?.entry.line.text;
  const path = text === undefined ? undefined : pathBegun(text.slice(0, character));
  return path && folderParts(path);
}

/** A date as far as it is typed. */
const DATE = /^\s*(?:session|revert(?:\s+to)?)\s+([\d-]+)$/i;
const WORDS = /#\d*|[\p{L}°%][\p{L}\p{M}\p{N}_°%²³\-'’·*/.&]*/gu;
const REST_OF_WORD = /^[\p{L}\p{M}\p{N}_°%²³]*/u;

function questionAt(
  snapshot: Snapshot,
  { line, character }: Position,
  around: CompletionContext,
): CompletionQuestion | undefined {
  const reading = lineStateAt(snapshot, line);
  if (!reading || reading.entry.line.tooLong || character > reading.entry.line.text.length) return undefined;
  const { text } = reading.entry.line;
  const before = text.slice(0, character);
  const rest = text.slice(character);
  const typed = DATE.exec(before)?.[1] ?? wordAtEnd(before);
  const from = character - typed.length;
  const to = typed === '' ? character : character + (REST_OF_WORD.exec(rest)?.[0].length ?? 0);
  const written = parseLine(before.slice(0, from));
  return { ...around, snapshot, line, state: reading.before, written, typed, from, to, rest };
}

/** A word as far as it is typed; empty where none is begun. */
function wordAtEnd(text: string): string {
  const last = text.match(WORDS)?.at(-1) ?? '';
  return text.endsWith(last) ? last : '';
}

function offersFor(question: CompletionQuestion): readonly Offer[] {
  const { written, typed, state } = question;
  const path = pathBegun(written.text + typed);
  if (path) return pathOffers(question, path);
  if (written.comment !== undefined) return ruleOffers(question, written.comment);
  const { syntax, tokens } = written;
  if (syntax.kind === 'item') return itemOffers(question, syntax);
  const last = tokens.kinds.at(-1);
  if (last === KIND.Prose || last === KIND.OpenText) return [];
  if (isTimeGoneBy(tokens.kinds)) return timeUnits(question);
  switch (syntax.kind) {
    case 'blank':
      return nameOffers(question);
    case 'session':
      return sessionOffers(question, syntax);
    case 'fit':
      return fitOffers(question, syntax);
    case 'check':
      return checkOffers(question, syntax);
    case 'revert':
      return revertOffers(question, syntax);
    case 'recheck':
      return recheckOffers(question, syntax);
    case 'trial':
      return trialOffers(question, syntax);
    case 'row':
    case 'want':
      return rowOffers(question, syntax);
    case 'entry':
      return entryOffers(question, readEntry(written, state), syntax.groups);
    default:
      return [];
  }
}

const isTimeGoneBy = (kinds: string): boolean => /^\+[nfm]$/.test(kinds);

/** A colon ends a name; the one of a clock time does not. */
const HAS_NAME = /^(?!\s*\d+:\d+\s*[^:]*$).*:/;

type Groups = Parameters<typeof valueOffers>[3];

function entryOffers(question: CompletionQuestion, entry: Entry, groups: Groups): readonly Offer[] {
  const isNameOnly = groups.every(({ values, conditions }) => values.length + conditions.length === 0);
  const names =
    isNameOnly && groups.length <= 1 && !HAS_NAME.test(question.written.text) ? nameOffers(question) : [];
  switch (entry.kind) {
    case 'setting':
    case 'reading':
    case 'fact':
    case 'limit':
    case 'target':
      return [...valueOffers(question, entry.quantity, entry.statements[0]?.place?.text, groups), ...names];
    case 'spec':
      return [...valueOffers(question, entry.quantity, undefined, groups), ...names];
    case 'port':
      return portOffers(question);
    case 'word':
      return wordOffers(question);
    default:
      return names;
  }
}

/** What is on a port: nothing, or what another port has. */
function portOffers({ state, from }: CompletionQuestion): readonly Offer[] {
  const things = [...state.ports.values()].map(({ on }) => on).filter((on) => on !== '');
  return [...new Set(['capped', 'open', ...things])].map((text) => ({
    label: text,
    kind: 'value',
    detail: '',
    text,
    from,
  }));
}

/** After the name of an own word: what it is, then in which unit. */
function wordOffers(question: CompletionQuestion): readonly Offer[] {
  const { written, from } = question;
  if (/,/.test(written.text)) return allUnits(question);
  if (!/:/.test(written.text)) return [];
  return [
    { label: 'setting', kind: 'setting', detail: 'stays until it is changed', text: 'setting', from },
    { label: 'reading', kind: 'reading', detail: 'one measurement', text: 'reading', from },
  ];
}

/** Those that found something on this line first. */
function ruleOffers(
  { written, from, snapshot, line }: CompletionQuestion,
  comment: number,
): readonly Offer[] {
  const begun = written.text.slice(tokenSpan(written, comment).from);
  if (!/^;\s*meant:(?:\s*[\w-]+,)*\s*$/i.test(begun)) return [];
  const found = new Set([...findingsIn(snapshot, line, line + 1)].map(({ code }) => code));
  const sorted = RULES.toSorted((a, b) => Number(found.has(b.code)) - Number(found.has(a.code)));
  return sorted.map(({ code, title }) => ({ label: code, kind: 'rule', detail: title, text: code, from }));
}
