/** Hover of a part, where described or fitted: what it is, when it was fitted, which settings it holds. */

import type { FitEntry, PartEntry } from '../../model/entry/entry.ts';
import { lineStateAt } from '../../model/snapshot/locate.ts';
import type { Page } from '../../model/snapshot/page.ts';
import { settingText } from '../../model/state/setting-text.ts';
import type { SettingInForce, State } from '../../model/state/state.ts';
import type { PartKind } from '../../trade/vocabulary/quantity.ts';
import { plain, stacked, strong } from '../markdown.ts';
import { mentionsOf } from '../mentions.ts';
import type { HoverQuestion } from './question.ts';
import { whereabouts } from './whereabouts.ts';

const MOST_TIMES = 4;

/** Markdown. */
export function partText(question: HoverQuestion, entry: PartEntry | FitEntry): string {
  const { snapshot, reading } = question;
  const { parts } = reading.after;
  const written = entry.line.text.slice(entry.nameSpan.from, entry.nameSpan.to);
  const description = entry.kind === 'part' ? entry.text : parts.get(entry.name)?.text;
  const kind =
    entry.kind === 'part' ? entry.part : (parts.get(entry.name)?.part ?? fittedKind(question, entry));
  const then = entry.kind === 'fit' ? reading.after : (snapshot.pages.at(-1) as Page).after;
  const title = entry.kind === 'fit' ? `${entry.word} ${written}` : written;
  return stacked([
    [strong(title), description && plain(description)].filter(Boolean).join(' '),
    ...timesText(question, entry),
    ...settingsText(then, entry, kind),
  ]);
}

const fittedKind = ({ reading }: HoverQuestion, { name }: FitEntry): PartKind | undefined =>
  [...reading.after.fitted, ...reading.before.fitted].find(([, fitted]) => fitted.name === name)?.[0];

/** `Fitted: line 71, 2026-03-07`; the latest of many. */
function timesText(question: HoverQuestion, { kind, name }: PartEntry | FitEntry): readonly string[] {
  const { snapshot, line } = question;
  const lines = mentionsOf(snapshot, { of: 'part', name }).filter(({ role }) => role === 'writes');
  const texts = lines.slice(-MOST_TIMES).flatMap(({ at }) => {
    const reading = lineStateAt(snapshot, at);
    if (reading?.entry.kind !== 'fit' || at === line) return [];
    const what = reading.entry.word === 'fit' ? 'fitted' : 'removed';
    return [`${what} ${whereabouts(question, reading.where)}`];
  });
  if (texts.length === 0) return [];
  const text = texts.join('; ');
  return [plain(kind === 'fit' ? `Also ${text}` : text[0]?.toUpperCase() + text.slice(1))];
}

function settingsText(
  { settings, fitted, parked }: State,
  { kind: lineKind, name }: PartEntry | FitEntry,
  kind: PartKind | undefined,
): readonly string[] {
  const isOn = kind !== undefined && fitted.get(kind)?.name === name;
  const owned = isOn ? ofOwner(settings, kind) : [...(parked.get(name)?.values() ?? [])];
  if (owned.length === 0)
    return isOn && lineKind === 'fit' ? ['Its settings are unknown until they are written.'] : [];
  const texts = owned.map((setting) => [setting.quantity.name, setting.place, settingText(setting)]);
  return [plain(`${TITLES[lineKind]}: ${texts.map((words) => words.filter(Boolean).join(' ')).join(', ')}`)];
}

const TITLES = { fit: 'Its settings', part: 'Its settings now' } as const;

const ofOwner = (settings: State['settings'], owner: PartKind): readonly SettingInForce[] =>
  [...settings.values()].filter(({ quantity }) => quantity.owner === owner);
