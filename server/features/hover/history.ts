/** History in a hover: for a setting its value before, for a reading the last comparable one. */

import { differenceText, statementText } from '../../model/entry/as-written.ts';
import type { QuantityEntry, Statement } from '../../model/entry/entry.ts';
import { lineOf, lineStateAt } from '../../model/snapshot/locate.ts';
import type { Page } from '../../model/snapshot/page.ts';
import { sessionHead } from '../../model/snapshot/section-ranges.ts';
import { pageAt } from '../../model/snapshot/snapshot.ts';
import { changeText, settingText } from '../../model/state/setting-text.ts';
import { keyOf, type SessionReading, type SettingInForce } from '../../model/state/state.ts';
import { isResponse } from '../../trade/vocabulary/quantity.ts';
import { plain, strong } from '../markdown.ts';
import type { HoverQuestion } from './question.ts';
import { whereabouts } from './whereabouts.ts';

/** What it comes to where only a change is written; what it was before; what it was before this session, if that is another. */
export function settingHistory(
  question: HoverQuestion,
  { quantity }: QuantityEntry,
  said: Statement,
): readonly string[] {
  const { before, after } = question.reading;
  const key = keyOf(quantity.name, said.place?.text);
  const now = after.settings.get(key);
  if (!now) return [];
  const earlier = (settings: ReadonlyMap<string, SettingInForce> | undefined) =>
    settings?.get(key) ?? settings?.get(keyOf(quantity.name, undefined));
  const last = earlier(before.settings);
  const atStart = earlier(settingsBeforeSession(question));
  const titled = (title: string) => (now.place ? `${now.place}: ${title.toLowerCase()}` : title);
  return [
    ...sumText(question, titled('Now'), now),
    ...earlierText(question, titled('Before'), last, now),
    ...(sameLine(atStart, last) ? [] : earlierText(question, titled('Before this session'), atStart, now)),
  ];
}

const sameLine = (a: SettingInForce | undefined, b: SettingInForce | undefined): boolean =>
  a?.by.ref.page === b?.by.ref.page && a?.by.ref.line === b?.by.ref.line;

/** Undefined outside sessions. */
function settingsBeforeSession({
  snapshot,
  reading,
}: HoverQuestion): ReadonlyMap<string, SettingInForce> | undefined {
  const head = sessionHead(snapshot, reading.after);
  return head === undefined ? undefined : lineStateAt(snapshot, head)?.before.settings;
}

/** Shown where the line does not give the setting whole: `mixture in 1/4 turn`, `vacuum advance plugged`. */
function sumText(question: HoverQuestion, title: string, now: SettingInForce): readonly string[] {
  if (now.base && lineOf(question.snapshot, now.base.ref) === question.line) return [];
  const since = now.base ? `, counted from ${whereabouts(question, now.base)}` : '';
  return [`${plain(title)} ${strong(settingText(now))}${plain(since)}`];
}

function earlierText(
  question: HoverQuestion,
  title: string,
  earlier: SettingInForce | undefined,
  now: SettingInForce,
): readonly string[] {
  if (!earlier) return [];
  const change = changeText(earlier, now);
  const text = `${title} ${settingText(earlier)} (${whereabouts(question, earlier.by)})`;
  return [plain(change ? `${text}: ${change}` : text)];
}

/** The last one of the same quantity and place. Responses are compared by the figures instead, with their conditions. */
export function readingHistory(
  question: HoverQuestion,
  { quantity }: QuantityEntry,
  said: Statement,
): readonly string[] {
  const last = isResponse(quantity) ? undefined : lastOf(question, quantity.name, said.place?.text);
  if (!last) return [];
  const title = said.place ? `${said.place.text}: last` : 'Last';
  const where = whereabouts(question, last.by);
  const [was, is] = [last.statement, said].map(({ values }) => (values.length === 1 ? values[0] : undefined));
  const change = differenceText(was, is, quantity.unit);
  const text = `${title} ${statementText(last.statement, quantity.unit)} (${where})`;
  return [plain(change ? `${text}: ${change}` : text)];
}

/** In this session above this line, else in the latest session above that has one. */
function lastOf(
  { snapshot, line, reading }: HoverQuestion,
  name: string,
  place: string | undefined,
): SessionReading | undefined {
  const among = (readings: ReadonlyMap<string, SessionReading>) =>
    [...readings.values()].findLast(
      (each) => each.quantity.name === name && each.statement.place?.text === place,
    );
  const today = among(reading.before.readings);
  if (today) return today;
  for (let page = pageAt(snapshot, line) - 1; page >= 0; page--) {
    const taken = among((snapshot.pages[page] as Page).after.readings);
    if (taken) return taken;
  }
  return undefined;
}
