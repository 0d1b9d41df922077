/** References to a name: in the notebook of the request, and those to a word in all notebooks that share it. */
import type { Position, Range } from '../../../grammar/index.ts';
import { mentionAt } from '../../features/mentions.ts';
import { referring } from '../../features/references.ts';
import type { NotebookRequestContext } from '../request.ts';
import { runWithPauses } from '../yielding.ts';
import { othersSharing } from './sharing.ts';

/** By notebook, that of the request first. `definitions`: with the lines that define the name. Only words are shared by notebooks. */
export async function referencesEverywhere(
  context: NotebookRequestContext,
  { line, character }: Position,
  definitions: boolean,
): Promise<ReadonlyMap<string, readonly Range[]>> {
  const subject = mentionAt(context.snapshot, line, character);
  if (!subject) return new Map();
  const places = new Map<string, readonly Range[]>();
  const others = subject.of === 'word' ? (await othersSharing(context, subject)).notebooks : [];
  for (const { uri, snapshot } of [context, ...others.filter(({ shares }) => shares)])
    places.set(uri, await runWithPauses(referring(snapshot, subject, definitions), context.pause));
  return places;
}
