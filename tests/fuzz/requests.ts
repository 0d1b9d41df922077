/** An editor that opens, types, asks, cancels and closes in any order: every request is answered, of the text it was asked about. */
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { HANDLERS } from '../../server/lsp/handlers.ts';
import { talkAbout } from './connection.ts';
import { type Editor, editorOf, uriOf } from './editor.ts';
import type { Fuzzer } from './fuzzer.ts';
import { text, wellFormed } from './texts.ts';

const STEPS = 24;
const one = <T>(...choices: readonly T[]) => fc.constantFrom(...choices);

const name = one('a.tappet', 'b.tappet', 'c.tappet');
const shared = one(
  '',
  '',
  'use b.tappet\n',
  'use c.tappet\nuse a.tappet\n',
  'words\n  flap gap: setting, 2..5 mm\n',
);
const anyText = fc.tuple(shared, text).map(([use, text]) => wellFormed(use + text));

const near = fc.record({
  line: fc.nat({ max: 40 }),
  character: fc.oneof(fc.constant(0), fc.nat({ max: 30 })),
});
const far = fc.record({
  line: one(-1, 0, 1.5, 1e9, 2 ** 31 - 1),
  character: one(-1, 0, 0.5, 1e9, 2 ** 31 - 1),
});
const position = fc.oneof({ weight: 8, arbitrary: near }, { weight: 1, arbitrary: far });
const range = fc.record({ start: position, end: position });
const nearRange = fc.record({ start: near, end: near });

const change = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      range: nearRange,
      text: fc.oneof(
        one('', '\n', '\r', 'x', '9', ';', '"', 'session 2026-05-03\n', 'use c.tappet\n', '🔧'),
        anyText,
      ),
    }),
  },
  { weight: 1, arbitrary: fc.record({ text: anyText }) },
);

const newName = one(
  'air flap',
  'idle',
  'constructor',
  '__proto__',
  '',
  '🔧',
  'שלום',
  'a\nb',
  ' '.repeat(50),
  '"',
  'Gap',
);
const options = { tabSize: 2, insertSpaces: true };
const commands = one(...['tappet.compare', 'tappet.start', 'tappet.explain', 'constructor', '']);

const asking = fc
  .record({ position, range, newName, command: commands, nth: fc.nat({ max: 9 }) })
  .map(({ position, range, newName, command, nth }) => ({
    position,
    range,
    newName,
    options,
    positions: [position, range.start],
    ch: '\n',
    query: newName,
    previousResultId: String(nth),
    previousResultIds: [],
    context: {
      includeDeclaration: nth % 2 === 0,
      diagnostics: [],
      triggerKind: 1 + (nth % 2),
      triggerCharacter: ' ',
    },
    command,
    arguments: [
      { uri: uriOf('a.tappet'), line: position.line, against: nth, code: nth % 2 ? 'band' : undefined },
    ],
    files: [{ oldUri: uriOf('b.tappet'), newUri: uriOf('moved/b.tappet') }],
  }));

type Step = (editor: Editor) => void | Promise<void>;

/** A step with its name, as a failure prints it. */
const step = (shown: string, act: Step): Step =>
  Object.assign((editor: Editor) => act(editor), { [fc.toStringMethod]: () => shown });

const shown = (...values: readonly unknown[]) => values.map((value) => JSON.stringify(value)).join(' ');

const REST = step('rest', (editor) => editor.rest());
const steps: fc.Arbitrary<Step> = fc.oneof(
  { withCrossShrink: true },
  { weight: 1, arbitrary: fc.constant(REST) },
  { weight: 2, arbitrary: fc.constant(step('breathe', (editor) => editor.breathe())) },
  {
    weight: 3,
    arbitrary: fc
      .tuple(name, anyText)
      .map(([name, text]) => step(`open ${shown(name, text)}`, (editor) => editor.open(name, text))),
  },
  {
    weight: 1,
    arbitrary: name.map((name) => step(`close ${name}`, (editor) => editor.close(name))),
  },
  {
    weight: 6,
    arbitrary: fc
      .tuple(name, fc.array(change, { minLength: 1, maxLength: 3 }))
      .map(([name, changes]) =>
        step(`change ${shown(name, changes)}`, (editor) => editor.change(name, changes)),
      ),
  },
  {
    weight: 12,
    arbitrary: fc
      .tuple(name, one(...HANDLERS.map(({ method }) => method)), asking)
      .map(([name, method, asked]) =>
        step(
          `ask ${shown(name, method, asked.position, asked.range, asked.newName, asked.command)}`,
          (editor) => editor.ask(name, method, asked),
        ),
      ),
  },
  {
    weight: 2,
    arbitrary: fc.nat({ max: 9 }).map((nth) => step(`cancel ${nth}`, (editor) => editor.cancel(nth))),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(name, anyText)
      .map(([name, text]) => step(`write ${shown(name, text)}`, (editor) => editor.write(name, text))),
  },
);

/** Asked of every notebook in the end. */
const AT_LAST = ['textDocument/diagnostic', 'textDocument/foldingRange', 'textDocument/formatting'];

async function talks(files: readonly string[], steps: readonly Step[]): Promise<void> {
  const disk = new Map(files.map((text, i) => [['a.tappet', 'b.tappet', 'c.tappet'][i] as string, text]));
  const talk = await talkAbout(disk);
  const editor = editorOf(talk, disk);
  for (const step of steps) await step(editor);
  await editor.rest();
  for (const name of editor.openNames()) for (const method of AT_LAST) editor.ask(name, method, { options });
  await editor.rest();
  await talk.stop();
  assert.deepEqual(talk.logged, []);
}

export const requests: Fuzzer = {
  name: 'requests',
  stepsPerRun: STEPS,
  property: () =>
    fc.asyncProperty(
      fc.array(anyText, { maxLength: 3 }),
      fc.array(steps, { minLength: STEPS, maxLength: STEPS }),
      talks,
    ),
};
