/** Renames a part, an item or a word: a word in the notebook that defines it and in all that use it from there. */

import type { Subject } from '../../features/mentions.ts';
import { keeping, type Refusal, renaming } from '../../features/rename.ts';
import type { Shared } from '../../model/snapshot/look-up.ts';
import type { Snapshot } from '../../model/snapshot/snapshot.ts';
import { type NotebookTexts, sharedFor } from '../../model/snapshot/used-notebooks.ts';
import type { State } from '../../model/state/state.ts';
import type { NotebookChanges } from '../changes.ts';
import type { NotebookRequestContext } from '../request.ts';
import { runWithPauses } from '../yielding.ts';
import { plainAddress } from './addresses.ts';
import { MOST_NOTEBOOKS } from './notebook-index.ts';
import { othersSharing } from './sharing.ts';
import type { Workspace } from './workspace.ts';

/** The changes of each notebook, or why one of them prevents it. Only words are shared by notebooks. */
export async function renameEverywhere(
  context: NotebookRequestContext,
  subject: Subject,
  newName: string,
): Promise<readonly NotebookChanges[] | Refusal> {
  const { uri, version, snapshot, server, pause } = context;
  const { workspace } = server;
  const own = await runWithPauses(renaming(snapshot, subject, newName), pause);
  if ('refused' in own) return own;
  const changes: NotebookChanges[] = [{ uri, version, edits: own.edits }];
  if (subject.of !== 'word') return changes;
  // What each provides once it is changed, for those that use it: they must mean the same with the new name.
  const given = new Map<string, State>([[plainAddress(uri), own.given]]);
  const texts: NotebookTexts = {
    ...workspace.texts,
    stateOf: (name) => given.get(name) ?? workspace.texts.stateOf(name),
  };
  const { notebooks, unread } = await othersSharing(context, subject);
  const refused = whyNotAll(workspace, [...unread, ...workspace.unread()]);
  if (refused !== undefined) return { refused };
  for (const { shares, ...user } of notebooks) {
    const name = plainAddress(user.uri);
    const result = await runWithPauses(
      shares
        ? renaming(user.snapshot, subject, newName, sharedFor(name, texts))
        : unchanged(user.snapshot, newName, sharedFor(name, texts)),
      pause,
    );
    if ('refused' in result) return { refused: `${fileName(name)}: ${result.refused}` };
    if (result.edits.length > 0) changes.push({ ...user, edits: result.edits });
    given.set(name, result.given);
  }
  return changes;
}

/** One that means something else by the old name, or does not say it. */
function* unchanged(snapshot: Snapshot, newName: string, shared: Shared): ReturnType<typeof renaming> {
  const given = yield* keeping(snapshot, newName, shared);
  return 'refused' in given ? given : { edits: [], given };
}

/** A notebook that keeps the old name would have a word that nothing defines. Undefined where all are known. */
function whyNotAll({ isShort }: Workspace, [unread]: readonly string[]): string | undefined {
  if (isShort())
    return `More than ${MOST_NOTEBOOKS} notebooks in the open folders, and no more are read: the others may use this word and would keep its old name. Open a smaller folder that has all notebooks with this word.`;
  return unread === undefined
    ? undefined
    : `${fileName(unread)} cannot be read. It may use this word and would keep the old name.`;
}

const fileName = (uri: string): string => decodeURIComponent(uri.split('/').at(-1) as string);
