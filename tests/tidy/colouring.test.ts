/** The colouring grammar, read by the engine that editors read it with. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { createOnigScanner, createOnigString, loadWASM } from 'vscode-oniguruma';
import { type IGrammar, INITIAL, parseRawGrammar, Registry } from 'vscode-textmate';

const GRAMMAR = join(import.meta.dirname, '../../grammar/tappet.tmLanguage.json');
const grammar = await load();

/** A line, and the pieces of it with the scope of each, innermost, without the language's name. */
const LINES: readonly (readonly [line: string, ...pieces: readonly string[]])[] = [
  ['notebook  Marsh runner', 'notebook: keyword.control', 'Marsh runner: entity.name.section'],
  ['engine ; rebuilt', 'engine: keyword.control', '; rebuilt: comment.line.semicolon'],
  [
    'session 2026-05-02 09:30  New springs',
    'session: keyword.control',
    '2026-05-02: constant.numeric.date',
    '09:30: constant.numeric.time',
    'New springs: entity.name.section',
  ],
  ['  initial  9 deg', 'initial: variable.parameter', '9: constant.numeric', 'deg: keyword.other.unit'],
  [
    '  mechanical limit 14 deg',
    'mechanical limit: variable.parameter',
    '14: constant.numeric',
    'deg: keyword.other.unit',
  ],
  [
    '  idle 850 rpm in drive',
    'idle: entity.name.function',
    '850: constant.numeric',
    'rpm: keyword.other.unit',
    'in: keyword.operator.word',
  ],
  ['  idle 850 in drive', 'idle: entity.name.function', '850: constant.numeric', 'in: keyword.operator.word'],
  [
    '  depression 17 in Hg',
    'depression: entity.name.function',
    '17: constant.numeric',
    'in Hg: keyword.other.unit',
  ],
  [
    '  total <= 34 deg',
    'total: entity.name.function',
    '<=: keyword.operator',
    '34: constant.numeric',
    'deg: keyword.other.unit',
  ],
  ['  bore 86 mm', 'bore: variable.parameter', '86: constant.numeric', 'mm: keyword.other.unit'],
  [
    '  points gap 0.016"',
    'points gap: variable.parameter',
    '0.016: constant.numeric',
    '": keyword.other.unit',
  ],
  [
    '  mixture 1 1/2 turns',
    'mixture: variable.parameter',
    '1 1/2: constant.numeric',
    'turns: keyword.other.unit',
  ],
  [
    '  plug #4 "sooty, wet"',
    'plug: entity.name.function',
    '#4: constant.language',
    '"sooty, wet": string.quoted.double',
  ],
  [
    '  +35 min  tube 388 401 F',
    '+35 min: constant.numeric.time',
    'tube: entity.name.function',
    '388: constant.numeric',
    '401: constant.numeric',
    'F: keyword.other.unit',
  ],
  ['  note 9 deg; hunts', 'note: keyword.control', '9 deg; hunts: markup.italic'],
  [
    '  fault steering: binds hard [safety]',
    'fault: keyword.control',
    'steering: entity.name.type',
    ':: punctuation.separator',
    'binds hard: markup.italic',
    '[safety]: storage.modifier',
  ],
  ['  fit carb single', 'fit: keyword.control', 'carb single: entity.name.type'],
  [
    '  trial feed restrictor -> oil pressure',
    'trial: keyword.control',
    'feed restrictor: variable.parameter',
    '->: keyword.operator',
    'oil pressure: variable.parameter',
  ],
];

test.each(LINES)('%s', (line, ...pieces) => {
  expect(coloured(line)).toEqual(pieces);
});

function coloured(line: string): string[] {
  const { tokens } = grammar.tokenizeLine(line, INITIAL);
  const pieces = tokens.map(({ startIndex, endIndex, scopes }) => ({
    text: line.slice(startIndex, endIndex).trim(),
    scope: scopes.at(-1)?.replace('.tappet', '') ?? '',
  }));
  return pieces
    .filter(({ text, scope }) => text && !['text', 'markup.heading'].includes(scope))
    .map(({ text, scope }) => `${text}: ${scope}`);
}

async function load(): Promise<IGrammar> {
  await loadWASM(readFileSync(createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm')));
  const registry = new Registry({
    onigLib: Promise.resolve({ createOnigScanner, createOnigString }),
    loadGrammar: async () => parseRawGrammar(readFileSync(GRAMMAR, 'utf8'), GRAMMAR),
  });
  const loaded = await registry.loadGrammar('text.tappet');
  if (!loaded) throw new Error('no colouring grammar');
  return loaded;
}
