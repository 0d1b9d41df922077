import type { Entry } from '../../model/entry/entry.ts';
import { lineSpan } from '../lib/line-syntax.ts';
import { replaceWith, rule } from '../rule.ts';

export const nothingSaid = rule({
  code: 'nothing-said',
  severity: 'warning',
  title: 'A line with nothing after its first word',
  why: 'The first word needs something after it: a part, a path, a date or text.',
  standing: 'notation',
  good: 'session 2026-05-02\n  todo strainer: brush the basket out\n',
  bad: 'session 2026-05-02\n  todo\n',
  outranks: ['unreadable'],
  on: ['unknown', 'item', 'fit', 'check', 'file', 'note', 'trial', 'recheck', 'revert'],
  check(entry, { before }) {
    const lack = lackIn(entry);
    if (lack === undefined) return [];
    const span = lineSpan(entry.line);
    const last = entry.kind === 'revert' ? before.keptSession?.date : undefined;
    if (last === undefined) return [{ span, message: lack }];
    const message = `${lack} The last session marked to keep is ${last}.`;
    return [{ span, message, fixes: [replaceWith(span, `revert to ${last}`)] }];
  },
});

/** The message about what is missing; undefined where nothing is. */
function lackIn(entry: Entry): string | undefined {
  switch (entry.kind) {
    case 'unknown':
      return entry.words.length === 0
        ? 'Nothing follows the time. Say what happened, or what was set or read.'
        : undefined;
    case 'item':
      return entry.id === '' ? `This ${entry.word} is empty. ${ITEM_NEEDS[entry.word]}` : undefined;
    case 'fit':
      return entry.name === '' ? `This ${entry.word} is empty. Name the part.` : undefined;
    case 'check':
      return entry.name === ''
        ? 'This check is empty. Name what was checked: "check fuel leaks ok".'
        : undefined;
    case 'file':
      return entry.path === '' ? `This ${entry.word} has no path. Write the path of the file.` : undefined;
    case 'note':
      return entry.text === '' ? 'This note is empty. Write its text.' : undefined;
    case 'trial':
      return entry.knob === '' || entry.response === '' ? trialLack(entry.knob) : undefined;
    case 'recheck':
      return entry.name === ''
        ? 'This reminder is empty. Say what to check again: "recheck head bolts after 200 mi".'
        : undefined;
    case 'revert':
      return entry.line.syntax.kind === 'revert' && entry.line.syntax.date === undefined
        ? 'This revert has no date. Write the date to go back to.'
        : undefined;
    default:
      return undefined;
  }
}

const ITEM_NEEDS = {
  todo: 'Say what needs doing: "strainer: brush the basket out".',
  fault: 'Say what is wrong: "strainer: drips at the cap".',
  done: 'Name what is done: "done strainer".',
} as const;

const trialLack = (knob: string): string =>
  knob === ''
    ? 'This trial is empty. Say what is tried and what it should change: "feed restrictor -> oil pressure".'
    : 'This trial has no response. Write what it should change after "->".';
