/** Commands that any editor may send. What they are given comes from outside: it is looked at before it is believed. */
import { ErrorCodes, ResponseError } from 'vscode-languageserver';
import { newSession } from '../features/new-session.ts';
import { type ComparisonAsked, comparisonOf } from '../report/comparison.ts';
import { comparisonText } from '../report/comparison-text.ts';
import { RULES, ruleOf } from '../rules/check.ts';
import { pageOf } from '../rules/pages.ts';
import { today } from './clock.ts';
import type { OpenDocument } from './documents.ts';
import type { Surroundings } from './request.ts';

/** `{ uri, line?, against? }`: a session against the last one kept, what stood before it, or the session at a line. */
export const COMPARE = 'tappet.compare';
/** `{ uri, line?, title?, date? }`: the head of a new session at the end, from the session at `line`. */
export const START = 'tappet.start';

/** `{ code }`: the page of a rule; without one, all rules that there are. */
export const EXPLAIN = 'tappet.explain';

type Command = (asked: Surroundings, document: OpenDocument, given: Given) => unknown;
type Given = Readonly<Record<string, unknown>>;

const COMMANDS: Readonly<Record<string, Command>> = { [COMPARE]: compare, [START]: start };

export const COMMAND_NAMES: readonly string[] = [...Object.keys(COMMANDS), EXPLAIN];

/** Answers what the command answers; an error for one that is not known or a notebook that is not open. */
export function runCommand(asked: Surroundings, name: string, [given]: readonly unknown[]): unknown {
  if (name === EXPLAIN) return explain(asked, record(given));
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!command) return refused(`no command ${name}`);
  const values = record(given);
  const document = [...asked.notebooks()].find(({ uri }) => uri === values.uri);
  return document ? command(asked, document, values) : refused(`not open: ${String(values.uri)}`);
}

/** @returns `{ text }` in Markdown, or `{ rules }`; told to the reader as a comparison is. */
function explain({ client, editor }: Surroundings, { code }: Given) {
  if (code === undefined)
    return { rules: RULES.map(({ code, title, severity }) => ({ code, title, severity })) };
  const rule = typeof code === 'string' ? ruleOf(code) : undefined;
  if (!rule) return refused(`no rule ${String(code)}`);
  const text = pageOf(rule);
  if (!client.showsText) editor.tell(text);
  return { text };
}

/** @returns `{ text }` in Markdown, or `{ problem }`; told to the reader by the server where the editor does not show it. */
function compare({ client, editor }: Surroundings, { snapshot }: OpenDocument, given: Given) {
  const line = lineIn(given.line) ?? Number.MAX_SAFE_INTEGER;
  const comparison = comparisonOf(snapshot, { line, against: againstIn(given.against) });
  const answer = 'problem' in comparison ? comparison : { text: comparisonText(comparison) };
  if (!client.showsText) editor.tell('problem' in answer ? answer.problem : answer.text);
  return answer;
}

/** @returns where writing goes on; null where the editor did not take the change. */
async function start(
  { client, editor }: Surroundings,
  { uri, version, snapshot }: OpenDocument,
  given: Given,
) {
  if (!client.takesEdits) return refused('this editor takes no changes from its server');
  const title = typeof given.title === 'string' ? given.title : '';
  const date =
    typeof given.date === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(given.date) ? given.date : today();
  const from = lineIn(given.line);
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

const refused = (why: string) => new ResponseError(ErrorCodes.InvalidParams, why);

const record = (value: unknown): Given =>
  typeof value === 'object' && value !== null ? (value as Given) : {};
