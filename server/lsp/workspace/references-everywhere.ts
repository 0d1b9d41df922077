/** Where something is named: in the notebook that is asked, and a word in all that share it. */
import type { Position, Range } from '../../../grammar/index.ts';
import { mentionAt } from '../../features/mentions.ts';
import { referring } from '../../features/references.ts';
import { type Pause, runWithPauses } from '../yielding.ts';
import { othersSharing } from './sharing.ts';
import type { Notebook, Workspace } from './workspace.ts';

interface ReferencesRequest extends Notebook {
  readonly workspace: Workspace;
  readonly pause: Pause;
}

/** By notebook, the one that is asked first. `definitions`: the lines that say what it is too. Only words go from one notebook to another. */
export async function referencesEverywhere(
  asked: ReferencesRequest,
  { line, character }: Position,
  definitions: boolean,
): Promise<ReadonlyMap<string, readonly Range[]>> {
  const subject = mentionAt(asked.snapshot, line, character);
  if (!subject) return new Map();
  const places = new Map<string, readonly Range[]>();
  const others = subject.of === 'word' ? (await othersSharing(asked, subject)).notebooks : [];
  for (const { uri, snapshot } of [asked, ...others.filter(({ shares }) => shares)])
    places.set(uri, await runWithPauses(referring(snapshot, subject, definitions), asked.pause));
  return places;
}
