import type { Entry } from '../model/notebook.ts';
import { replaceWith, rule } from './rule.ts';
import { lineSpan } from './syntax.ts';

export const nothingSaid = rule({
  code: 'nothing-said',
  severity: 'warning',
  title: 'A line that begins and says nothing',
  why: 'The word at its start needs something after it: a part, a path, a date, a text.',
  standing: 'notation',
  good: 'session 2026-05-02\n  todo strainer: brush the basket out\n',
  bad: 'session 2026-05-02\n  todo\n',
  outranks: ['unreadable'],
  on: ['unknown', 'item', 'fit', 'check', 'file', 'note', 'trial', 'recheck', 'revert'],
  check(entry, { before }) {
    const lacks = lacking(entry);
    if (lacks === undefined) return [];
    const span = lineSpan(entry.line);
    const last = entry.kind === 'revert' ? before.kept?.date : undefined;
    if (last === undefined) return [{ span, message: `Nothing is said here: ${lacks} is missing.` }];
    const message = `Nothing is said here: ${lacks} is missing. The last one marked to keep is of ${last}.`;
    return [{ span, message, fixes: [replaceWith(span, `revert to ${last}`)] }];
  },
});

/** What is missing, in words; undefined where nothing is. */
function lacking(entry: Entry): string | undefined {
  switch (entry.kind) {
    case 'unknown':
      return entry.words.length === 0 ? 'what happened at that time' : undefined;
    case 'item':
      return entry.id === '' ? 'a name for it, such as "strainer: brush the basket out",' : undefined;
    case 'fit':
    case 'check':
      return entry.name === '' ? 'what it is about' : undefined;
    case 'file':
      return entry.path === '' ? 'the path of the file' : undefined;
    case 'note':
      return entry.text === '' ? 'the note' : undefined;
    case 'trial':
      return entry.knob === '' || entry.response === '' ? trialLacks(entry.knob) : undefined;
    case 'recheck':
      return entry.name === '' ? 'what is to be checked again' : undefined;
    case 'revert':
      return entry.line.syntax.kind === 'revert' && entry.line.syntax.date === undefined
        ? 'the day to go back to'
        : undefined;
    default:
      return undefined;
  }
}

const trialLacks = (knob: string): string =>
  knob === ''
    ? 'what is tried, as in "feed restrictor -> oil pressure",'
    : 'what it should change, after "->",';
