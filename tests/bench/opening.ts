/**
 * How fast a notebook is opened and edited, beside a language service of the same kind of work in the same run:
 * vscode-json-languageservice parsing and validating a file of as many lines.
 */
import { getLanguageService, type JSONSchema } from 'vscode-json-languageservice';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { edit, open, type Snapshot } from '../../server/model/snapshot/snapshot.ts';
import { checkLine } from '../../server/rules/check.ts';
import { notebookOf } from './notebook.ts';

const SIZES = [1_000, 10_000, 100_000];
const OPENINGS = 3;
const EDITS = { ours: 400, peer: 12 };

const SCHEMA: JSONSchema = {
  type: 'object',
  additionalProperties: {
    type: 'object',
    required: ['value', 'unit'],
    properties: { value: { type: 'number', minimum: 0, maximum: 200 }, unit: { enum: ['deg', 'rpm'] } },
  },
};

interface Timed {
  /** Median of a few openings, ms. */
  readonly open: number;
  /** ms. */
  readonly edits: readonly number[];
}

interface Row extends Timed {
  readonly lines: number;
  /** Bytes that the opened file holds. */
  readonly heap: number;
}

/** Prints the table. Bytes are counted after all times are taken: a forced collection slows whatever comes next. */
export async function benchOpening(): Promise<void> {
  for (const lines of SIZES) await warmUp(lines);
  const ours: Timed[] = [];
  const peers: Timed[] = [];
  for (const lines of SIZES) {
    ours.push(await measureOurs(lines));
    peers.push(await measurePeer(lines));
  }
  const rows = (timed: readonly Timed[], hold: (lines: number) => unknown): Row[] =>
    SIZES.map((lines, i) => ({ ...(timed[i] as Timed), lines, heap: heapOf(() => hold(lines)) }));
  print(
    rows(ours, (lines) => open(notebookOf(lines), checkLine)),
    rows(peers, (lines) => {
      const document = TextDocument.create('file:///bench.json', 'json', 0, jsonOf(lines));
      return [document, getLanguageService({}).parseJSONDocument(document)];
    }),
  );
}

async function warmUp(lines: number): Promise<void> {
  if (lines > 10_000) return;
  await measureOurs(lines);
  await measurePeer(lines);
}

/** All findings are in the snapshot, each with its line. */
async function measureOurs(lines: number): Promise<Timed> {
  const text = notebookOf(lines);
  const lineText = text.split('\n');
  let snapshot: Snapshot = open('', checkLine);
  const opened = await medianOf(OPENINGS, () => {
    snapshot = open(text, checkLine);
  });
  const edits: number[] = [];
  for (const line of randomLines(lines, EDITS.ours)) {
    const at = afterNumber(lineText[line] as string, line);
    const began = performance.now();
    snapshot = edit(snapshot, { range: { start: at, end: at }, text: '1' });
    edits.push(performance.now() - began);
  }
  return { open: opened, edits };
}

async function measurePeer(lines: number): Promise<Timed> {
  const service = getLanguageService({});
  const text = jsonOf(lines);
  const lineText = text.split('\n');
  let document = TextDocument.create('file:///bench.json', 'json', 0, text);
  const validate = () => service.doValidation(document, service.parseJSONDocument(document), {}, SCHEMA);
  const opened = await medianOf(OPENINGS, validate);
  const edits: number[] = [];
  for (const line of randomLines(lines, EDITS.peer)) {
    const at = afterNumber(lineText[line] as string, line);
    const began = performance.now();
    document = TextDocument.update(
      document,
      [{ range: { start: at, end: at }, text: '1' }],
      document.version + 1,
    );
    await validate();
    edits.push(performance.now() - began);
  }
  return { open: opened, edits };
}

function jsonOf(lines: number): string {
  const entries = Array.from(
    { length: lines - 2 },
    (_, i) => `  "entry ${i}": { "value": ${i % 97}, "unit": "deg" }`,
  );
  return `{\n${entries.join(',\n')}\n}`;
}

function randomLines(lines: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => (i * 7919 + 13) % lines);
}

/** Behind the line's last figure: where somebody types the next one. */
function afterNumber(text: string, line: number): { line: number; character: number } {
  const last = /\d(?!.*\d)/.exec(text);
  return { line, character: last ? last.index + 1 : text.length };
}

async function medianOf(times: number, act: () => unknown): Promise<number> {
  const taken: number[] = [];
  for (let i = 0; i < times; i++) {
    const start = performance.now();
    await act();
    taken.push(performance.now() - start);
  }
  return at(taken, 0.5);
}

function heapOf(hold: () => unknown): number {
  hold(); // what is kept once and for all is not the file's
  globalThis.gc?.();
  globalThis.gc?.();
  const before = process.memoryUsage().heapUsed;
  const held = hold();
  globalThis.gc?.();
  return held ? process.memoryUsage().heapUsed - before : 0;
}

function print(ours: readonly Row[], peers: readonly Row[]): void {
  console.log('                    open            edit p50          edit p95          heap');
  console.log('   lines        ours    peer      ours    peer      ours    peer      ours    peer');
  for (const [i, row] of ours.entries()) console.log(lineOf(row, peers[i] as Row));
  const [last, peer] = [ours.at(-1) as Row, peers.at(-1) as Row];
  const ratio = at(peer.edits, 0.5) / at(last.edits, 0.5);
  console.log(
    `an edit in ${last.lines} lines: 1/${Math.round(ratio)} of the peer's; opening ${(last.open / peer.open).toFixed(2)} of the peer's`,
  );
}

function lineOf(row: Row, peer: Row): string {
  const pair = (f: (row: Row) => string) => `${f(row).padStart(10)}${f(peer).padStart(8)}`;
  const ms = (n: number) => (n < 10 ? n.toFixed(2) : n.toFixed(0));
  return [
    String(row.lines).padStart(8),
    pair((each) => `${ms(each.open)}`),
    pair((each) => ms(at(each.edits, 0.5))),
    pair((each) => ms(at(each.edits, 0.95))),
    pair((each) => `${(each.heap / 2 ** 20).toFixed(0)}M`),
  ].join('');
}

function at(times: readonly number[], share: number): number {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] as number;
}
