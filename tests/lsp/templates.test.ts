/** A template that was just put in: what it leaves open is not found fault with until its writer has gone on. */
import { expect, test } from 'vitest';
import type { Position } from '../../grammar/index.ts';
import { type Suggestion, suggestionsAt } from '../../server/features/completion.ts';
import { newSession } from '../../server/features/new-session.ts';
import { clientOf } from '../../server/lsp/client.ts';
import { foundIn } from '../../server/lsp/diagnostics.ts';
import { createDocuments, type OpenDocument } from '../../server/lsp/documents.ts';
import { DEFAULT_SETTINGS } from '../../server/lsp/settings.ts';
import { lineCount, lineText, textOf } from '../../server/model/snapshot/locate.ts';

const URI = 'file:///bench/x.tappet';
const TODAY = '2026-07-01';
const BOOK = 'notebook  Bench\n\nsession 2026-05-02\n  idle 850 rpm\n';

/** One notebook as an editor keeps it, with nothing held back for the typing. */
function opened(text: string) {
  const documents = createDocuments(() => () => undefined);
  documents.open(URI, 1, text);
  const document = () => documents.get(URI) as OpenDocument;
  const put = (start: Position, end: Position, text: string) => {
    documents.change(URI, document().version + 1, [{ range: { start, end }, text }]);
    documents.settle(URI);
  };
  const found = () =>
    foundIn(document(), DEFAULT_SETTINGS, clientOf({})).diagnostics.map(
      ({ code, range }) => `${code}: ${lineText(document().snapshot, range.start.line).trim()}`,
    );
  return { put, found, snapshot: () => document().snapshot, text: () => textOf(document().snapshot) };
}

/** The notebook after the text before the mark `‸` and the template of a word, as an editor with snippets puts it in. */
function withTemplate(marked: string, word: string, put: 'snippet' | 'text' = 'snippet') {
  const notebook = opened(marked.replace('‸', ''));
  const offered = offersAt(marked).find(({ label, snippet }) => label === word && snippet !== undefined);
  if (!offered) throw new Error(`no template for ${word}`);
  const indent = put === 'text' ? '' : (/^\s*/.exec(marked.split('\n').at(-1) ?? '')?.[0] ?? '');
  const isAtEdge = offered.range.start.character === 0;
  const text =
    put === 'text' ? offered.text : (offered.snippet ?? '').replaceAll('\n', `\n${isAtEdge ? '' : indent}`);
  notebook.put(offered.range.start, offered.range.end, text.replaceAll(/\$\d/g, ''));
  return { notebook, text, start: offered.range.start };
}

function offersAt(marked: string): readonly Suggestion[] {
  const { snapshot } = opened(marked.replace('‸', ''));
  const before = marked.slice(0, marked.indexOf('‸')).split('\n');
  const position = { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
  return suggestionsAt(snapshot(), position, { today: TODAY });
}

const PLACES = ['‸', `${BOOK}‸`, `${BOOK}  ‸`, `${BOOK}  trial shim -> idle\n    1 800 rpm\n  ‸`];
const OFFERED = PLACES.flatMap((place) =>
  offersAt(place)
    .filter(({ snippet }) => snippet !== undefined)
    .map(({ label }) => [label, place] as const),
);

test.each(OFFERED)('nothing is found in a fresh %s in %j', (word, place) => {
  expect(withTemplate(place, word).notebook.found()).toEqual([]);
  expect(withTemplate(place, word, 'text').notebook.found()).toEqual([]);
});

test('every place offers templates', () => expect(OFFERED.length).toBeGreaterThan(30));

test('nothing is found in a session just started', () => {
  const notebook = opened(BOOK);
  const { range, text } = newSession(notebook.snapshot(), { today: TODAY, title: 'Leaner' });
  notebook.put(range.start, range.end, text);
  expect(notebook.found()).toEqual([]);
});

/** What is written at each stop, one after another. */
const FILLED: readonly (readonly [word: string, ...answers: readonly string[]])[] = [
  ['engine', '4', '1-3-4-2', '84 mm', '80 mm', '9:1', 'petrol'],
  ['parts', 'carb', 'one-barrel', 'distributor  "points"'],
  ['limits', '34', 'water  <= 105 C'],
  ['targets', '800', 'water  85 C'],
  ['specs', 'head bolts', '60 lb-ft', 'handbook', 'points gap  0.4 mm  source "handbook"'],
  ['ports', 'manifold rear', 'brake booster', 'carb base  capped'],
  ['words', 'stop hole', 'setting', 'mm', 'hole in the stop', 'blade gap: setting, mm'],
  ['trial', 'initial', 'idle', '8 deg 780 rpm\n    12 deg 860 rpm', '820 rpm'],
];

test.each(FILLED)('%s is filled in stop by stop, and nothing is found on the way', (word, ...answers) => {
  const { notebook, text, start } = withTemplate(`${BOOK}${word === 'trial' ? '  ' : ''}‸`, word);
  const pieces = text.split(/\$\d/);
  for (const [i, answer] of answers.entries()) {
    const before = pieces.slice(0, i + 1).map((piece, at) => piece + (at < i ? answers[at] : ''));
    const at = ending(start, before.join(''));
    notebook.put(at, at, answer);
    expect(notebook.found(), notebook.text()).toEqual([]);
  }
});

function ending({ line, character }: Position, text: string): Position {
  const lines = text.split('\n');
  const last = lines.at(-1)?.length ?? 0;
  return { line: line + lines.length - 1, character: lines.length === 1 ? character + last : last };
}

test('what is left open is found once the writing goes on elsewhere', () => {
  const { notebook } = withTemplate(`${BOOK}‸`, 'limits');
  const end = { line: lineCount(notebook.snapshot()) - 1, character: 2 };
  notebook.put(end, end, 'water  <= 105 C\n');
  expect(notebook.found()).toEqual([]);
  const next = { line: end.line + 1, character: 0 };
  notebook.put(next, next, 'session 2026-07-01\n');
  expect(notebook.found()).toEqual(['missing-number: total            <=  deg']);
});

test('what is not as the template has it is found at once', () => {
  const { notebook } = withTemplate(`${BOOK}‸`, 'limits');
  const line = lineCount(notebook.snapshot()) - 2;
  notebook.put({ line, character: 2 }, { line, character: 7 }, 'totl');
  expect(notebook.found()).not.toEqual([]);
});

test('of lines that were typed or pasted nothing is kept quiet', () => {
  const notebook = opened(BOOK);
  const end = { line: 4, character: 0 };
  notebook.put(end, end, 'limits\n  total            <= deg\n  idle <= rpm\n');
  expect(notebook.found()).toHaveLength(2);
});
