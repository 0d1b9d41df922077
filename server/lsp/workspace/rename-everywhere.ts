/** A new name in the notebook that says what it is, and in those that take it from there. */

import type { TextEdit } from '../../features/document-links.ts';
import { mentionsOf, type Subject } from '../../features/mentions.ts';
import { type Refusal, renamed, renameIn } from '../../features/rename.ts';
import type { Carried } from '../../model/carry.ts';
import { type Known, sharedFor, stateGiven } from '../../model/shared.ts';
import { plainAddress } from './addresses.ts';
import type { Notebook, Workspace } from './workspace.ts';

export type Edits = ReadonlyMap<string, readonly TextEdit[]>;

/** The edits by notebook, or why one of them stands in the way. Only words go from one notebook to another. */
export async function renameEverywhere(
  { uri, snapshot }: Notebook,
  subject: Subject,
  newName: string,
  workspace: Workspace,
): Promise<Edits | Refusal> {
  const own = renameIn(snapshot, subject, newName);
  if ('refused' in own) return own;
  const edits = new Map([[uri, own]]);
  if (subject.of !== 'word') return edits;
  await workspace.whenRead();
  // What each gives once it is changed, for those that use it: they must be read the same with the new name.
  const given = new Map<string, Carried>([[plainAddress(uri), stateGiven(renamed(snapshot, own))]]);
  const known: Known = {
    ...workspace.known,
    stateOf: (name) => given.get(name) ?? workspace.known.stateOf(name),
  };
  for (const name of workspace.usersOf(uri)) {
    const user = await workspace.notebookAt(name);
    if (!user || mentionsOf(user.snapshot, subject).some(({ role }) => role === 'defines')) continue;
    const shared = sharedFor(name, known);
    const found = renameIn(user.snapshot, subject, newName, shared);
    if ('refused' in found) return { refused: `${fileName(name)}: ${found.refused}` };
    if (found.length > 0) edits.set(user.uri, found);
    given.set(name, stateGiven(renamed(user.snapshot, found, shared)));
  }
  return edits;
}

const fileName = (uri: string): string => decodeURIComponent(uri.split('/').at(-1) as string);
