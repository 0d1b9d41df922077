/** A new name in the notebook that says what it is, and in those that take it from there. */

import type { Subject } from '../../features/mentions.ts';
import { keeping, type Refusal, renaming } from '../../features/rename.ts';
import type { Shared, Snapshot } from '../../model/snapshot/snapshot.ts';
import { type NotebookTexts, sharedFor } from '../../model/snapshot/used-notebooks.ts';
import type { State } from '../../model/state/state.ts';
import type { NotebookChanges } from '../changes.ts';
import { type Pause, runWithPauses } from '../yielding.ts';
import { plainAddress } from './addresses.ts';
import { MOST_NOTEBOOKS } from './notebook-index.ts';
import { othersSharing } from './sharing.ts';
import type { Notebook, Workspace } from './workspace.ts';

interface RenameRequest extends Notebook {
  readonly workspace: Workspace;
  readonly pause: Pause;
}

/** The changes of each notebook, or why one of them stands in the way. Only words go from one notebook to another. */
export async function renameEverywhere(
  asked: RenameRequest,
  subject: Subject,
  newName: string,
): Promise<readonly NotebookChanges[] | Refusal> {
  const { uri, version, snapshot, workspace, pause } = asked;
  const own = await runWithPauses(renaming(snapshot, subject, newName), pause);
  if ('refused' in own) return own;
  const changes: NotebookChanges[] = [{ uri, version, edits: own.edits }];
  if (subject.of !== 'word') return changes;
  // What each gives once it is changed, for those that use it: they must be read the same with the new name.
  const given = new Map<string, State>([[plainAddress(uri), own.given]]);
  const known: NotebookTexts = {
    ...workspace.known,
    stateOf: (name) => given.get(name) ?? workspace.known.stateOf(name),
  };
  const { notebooks, unread } = await othersSharing(asked, subject);
  const refused = whyNotAll(workspace, [...unread, ...workspace.unread()]);
  if (refused !== undefined) return { refused };
  for (const { shares, ...user } of notebooks) {
    const name = plainAddress(user.uri);
    const found = await runWithPauses(
      shares
        ? renaming(user.snapshot, subject, newName, sharedFor(name, known))
        : unchanged(user.snapshot, newName, sharedFor(name, known)),
      pause,
    );
    if ('refused' in found) return { refused: `${fileName(name)}: ${found.refused}` };
    if (found.edits.length > 0) changes.push({ ...user, edits: found.edits });
    given.set(name, found.given);
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
    return `There are more than ${MOST_NOTEBOOKS} notebooks in the open folders, and only so many are read: the others may use this word and would keep its old name. Open a smaller folder that has all that use it.`;
  return unread === undefined
    ? undefined
    : `${fileName(unread)} may use this word and cannot be read, so that it would keep the old name.`;
}

const fileName = (uri: string): string => decodeURIComponent(uri.split('/').at(-1) as string);
