/** Commands that any editor may send. Their arguments come from outside and are checked before use. */
import { ErrorCodes, ResponseError } from 'vscode-languageserver';
import { newSession } from '../features/new-session.ts';
import { type ComparisonAsked, comparisonOf } from '../report/comparison.ts';
import { comparisonText } from '../report/comparison-text.ts';
import { RULES, ruleOf } from '../rules/check.ts';
import { pageOf } from '../rules/pages.ts';
import { today } from './clock.ts';
import type { OpenDocument } from './documents.ts';
import type { Server } from './server.ts';

/** `{ uri, line?, against? }`: a session against the last one kept, the state before it, or the session at a line. */
export const COMPARE = 'tappet.compare';
/** `{ uri, line?, title?, date? }`: the head of a new session at the end, from the session at `line`. */
export const START = 'tappet.start';

/** `{ code }`: the page of a rule; without a code, the list of all rules. */
export const EXPLAIN = 'tappet.explain';

type Command = (server: Server, document: OpenDocument, values: Arguments) => unknown;
type Arguments = Readonly<Record<string, unknown>>;

const COMMANDS: Readonly<Record<string, Command>> = { [COMPARE]: compare, [START]: start };

export const COMMAND_NAMES: readonly string[] = [...Object.keys(COMMANDS), EXPLAIN];

/** @returns the command's result; an error for an unknown command or a notebook that is not open. */
export function runCommand(server: Server, name: string, [first]: readonly unknown[]): unknown {
  const values = record(first);
  if (name === EXPLAIN) return explain(server, values);
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!command) return refusal(`no command ${name}`);
  const document = [...server.documents.all()].find(({ uri }) => uri === values.uri);
  return document ? command(server, document, values) : refusal(`not open: ${String(values.uri)}`);
}

/** @returns `{ text }` in Markdown, or `{ rules }`; the server shows the text where the editor does not. */
function explain({ client, editor }: Server, { code }: Arguments) {
  if (code === undefined)
    return { rules: RULES.map(({ code, title, severity }) => ({ code, title, severity })) };
  const rule = typeof code === 'string' ? ruleOf(code) : undefined;
  if (!rule) return refusal(`no rule ${String(code)}`);
  const text = pageOf(rule);
  if (!client().showsText) editor.showMessage(text);
  return { text };
}

/** @returns `{ text }` in Markdown, or `{ problem }`; the server shows it where the editor does not. */
function compare({ client, editor }: Server, { snapshot }: OpenDocument, values: Arguments) {
  const line = lineIn(values.line) ?? Number.MAX_SAFE_INTEGER;
  const comparison = comparisonOf(snapshot, { line, against: againstIn(values.against) });
  const answer = 'problem' in comparison ? comparison : { text: comparisonText(comparison) };
  if (!client().showsText) editor.showMessage('problem' in answer ? answer.problem : answer.text);
  return answer;
}

/** @returns where writing goes on; null where the editor did not make the change. */
async function start(
  { client, editor }: Server,
  { uri, version, snapshot }: OpenDocument,
  values: Arguments,
) {
  if (!client().takesEdits) return refusal('this editor takes no changes from its server');
  const title = typeof values.title === 'string' ? values.title : '';
  const date =
    typeof values.date === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(values.date) ? values.date : today();
  const from = lineIn(values.line);
  const { range, text, cursor } = newSession(snapshot, {
    today: date,
    title,
    ...(from !== undefined && { from }),
  });
  const isDone = await editor.apply('Start a session', { uri, version, edits: [{ range, text }] });
  return isDone ? cursor : null;
}

function againstIn(value: unknown): ComparisonAsked['against'] {
  return value === 'before' ? value : (lineIn(value) ?? 'kept');
}

const lineIn = (value: unknown): number | undefined =>
  typeof value === 'number' && Number.isInteger(value) && value >= 0 ? value : undefined;

const refusal = (why: string) => new ResponseError(ErrorCodes.InvalidParams, why);

const record = (value: unknown): Arguments =>
  typeof value === 'object' && value !== null ? (value as Arguments) : {};
