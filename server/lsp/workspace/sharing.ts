/** Notebooks that mean the same by a word: the one that says what it is, and those that take it from there. */
import { mentionsOf, type Subject } from '../../features/mentions.ts';
import { usesOf } from '../../model/shared.ts';
import { isAbsent } from '../../model/step.ts';
import type { Pause } from '../pausing.ts';
import { plainAddress } from './addresses.ts';
import type { Notebook, Workspace } from './workspace.ts';

interface Asked extends Notebook {
  readonly workspace: Workspace;
  readonly pause: Pause;
}

/** All of them but the one that is asked about, nearest to the one that defines the word first, open or not. */
export async function othersSharing(asked: Asked, word: Subject): Promise<readonly Notebook[]> {
  const { workspace, pause } = asked;
  await workspace.whenRead();
  const at = readOnce(asked);
  const origin = await originOf(asked, word, asked, at);
  if (!origin) return [];
  const others: Notebook[] = [];
  const mine = plainAddress(asked.uri);
  for (const address of [plainAddress(origin.uri), ...workspace.usersOf(origin.uri)]) {
    await pause();
    const notebook = address === mine ? undefined : await at(address);
    if (notebook && (await originOf(notebook, word, asked, at)) === origin) others.push(notebook);
  }
  return others;
}

type At = (address: string) => Promise<Notebook | undefined>;

/** Each notebook is read once in an answer, however many use it. */
function readOnce({ uri, version, snapshot, workspace, pause }: Asked): At {
  const read = new Map<string, Promise<Notebook | undefined>>([
    [plainAddress(uri), Promise.resolve({ uri, version, snapshot })],
  ]);
  return (address) => {
    const notebook = read.get(address) ?? workspace.notebookAt(address, pause);
    read.set(address, notebook);
    return notebook;
  };
}

/** The notebook that says what a word means in another: itself, or what it has from those that it uses, the last of them first. */
async function originOf(
  from: Notebook,
  word: Subject,
  { workspace }: Asked,
  at: At,
): Promise<Notebook | undefined> {
  const seen = new Set<string>();
  let notebook: Notebook | undefined = from;
  while (notebook && !seen.has(notebook.uri)) {
    if (mentionsOf(notebook.snapshot, word).some(({ role }) => role === 'defines'))
      return at(plainAddress(notebook.uri));
    seen.add(notebook.uri);
    const path = pathGiving(notebook, word);
    const target: string | undefined =
      path === undefined ? undefined : workspace.resolve(plainAddress(notebook.uri), path);
    notebook = target === undefined ? undefined : await at(target);
  }
  return undefined;
}

/** Of several notebooks that give a word, the last one used has the last word. */
const pathGiving = ({ snapshot }: Notebook, { name }: Subject): string | undefined =>
  usesOf(snapshot).findLast((path) => {
    const given = snapshot.shared(path);
    return given && !isAbsent(given) && given.words.has(name);
  });
