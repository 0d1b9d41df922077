/** The table of figures has no row that nobody sees, and no table names a word that the vocabulary does not have. */
import { expect, test } from 'vitest';
import type { FigureContext, Working } from '../../server/analysis/figure.ts';
import { WORKINGS } from '../../server/analysis/figures.ts';
import { lineStateAt } from '../../server/model/snapshot/locate.ts';
import type { Files as NamedFiles } from '../../server/model/snapshot/named-files.ts';
import { sessionsOf } from '../../server/model/snapshot/section-ranges.ts';
import { inForceAt } from '../../server/report/in-force.ts';
import { openNotebook } from '../../server/rules/check.ts';
import { VOCABULARY } from '../../server/trade/vocabulary/vocabulary.ts';
import { projectFiles } from './files.ts';

const files = projectFiles();
const samples = [...files].filter(([path]) => /^samples\/[^/]+\.tappet$/.test(path));
const named: NamedFiles = new Map(
  [...files].flatMap(([path, text]) =>
    path.startsWith('samples/logs/') ? [[path.slice('samples/'.length), { text }] as const] : [],
  ),
);

const keyOf = ({ topic, name }: { readonly topic: string; readonly name: string }) => `${topic}: ${name}`;

interface End {
  readonly moment: FigureContext;
  /** What the terminal shows there, by topic and name; a hover shows no other figures. */
  readonly shown: ReadonlySet<string>;
}

/** The ends of all sessions of all samples. */
const ends: readonly End[] = samples.flatMap(([, text]) => {
  const snapshot = openNotebook(text);
  return sessionsOf(snapshot).flatMap(({ to }) => {
    const line = to - 1;
    const state = lineStateAt(snapshot, line)?.after;
    if (!state) return [];
    const shown = new Set(inForceAt(snapshot, line, named).figures.map(keyOf));
    return [{ moment: { state, snapshot, line, files: named }, shown }];
  });
});

const isShown = ({ work }: Working): boolean =>
  ends.some(({ moment, shown }) => work(moment).some((figure) => shown.has(keyOf(figure))));

test('each row of the table of figures is shown for some sample', () => {
  const unseen = WORKINGS.filter((working) => !isShown(working));
  expect(unseen.map(({ topic, about }) => `${topic}, about ${about}`)).toEqual([]);
});

const WORDS: ReadonlySet<string> = new Set(VOCABULARY.map(({ name }) => name));
/** What a figure may be about that is no quantity: kinds of line, and things that are fitted. */
const ALSO_ABOUT: ReadonlySet<string> = new Set(['trial', 'session', 'port', 'spec', 'recheck', 'log']);

test('each word that a row of a table names is in the vocabulary', () => {
  const inFigures = WORKINGS.flatMap(({ about }) => (about === 'every word' ? [] : about));
  expect(inFigures.filter((name) => !ALSO_ABOUT.has(name) && !WORDS.has(name))).toEqual([]);
});
