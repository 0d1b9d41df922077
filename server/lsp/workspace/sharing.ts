/** Notebooks that mean the same by a word: the one that says what it is, and those that take it from there. */
import { mentionsOf, type Subject } from '../../features/mentions.ts';
import { usesOf } from '../../model/snapshot/used-notebooks.ts';
import { isAbsent } from '../../model/state/lookup.ts';
import type { Pause } from '../yielding.ts';
import { plainAddress } from './addresses.ts';
import type { Notebook, Workspace } from './workspace.ts';

interface SharingRequest extends Notebook {
  readonly workspace: Workspace;
  readonly pause: Pause;
}

interface Other extends Notebook {
  /** It means the same by the word; where not, it only uses a notebook that does. */
  readonly shares: boolean;
}

interface Others {
  /** Nearest to the one that defines the word first, open or not. */
  readonly notebooks: readonly Other[];
  /** The addresses of those that use it, or one that does, and cannot be read: what they say is not known. */
  readonly unread: readonly string[];
}

/** All that use the one that defines the word, and that one; not the one that is asked about. */
export async function othersSharing(asked: SharingRequest, word: Subject): Promise<Others> {
  const { workspace, pause } = asked;
  await workspace.whenRead();
  const mine = plainAddress(asked.uri);
  const at = readOnce(asked);
  const originOf = findingOrigins(asked, word, at);
  const origin = await originOf(mine);
  if (origin === undefined) return { notebooks: [], unread: [] };
  const notebooks: Other[] = [];
  const unread: string[] = [];
  for (const address of [origin, ...workspace.usersOf(origin)]) {
    await pause();
    if (address === mine) continue;
    const notebook = await at(address);
    if (!notebook && (await workspace.isThere(address))) unread.push(address);
    if (notebook) notebooks.push({ ...notebook, shares: (await originOf(address)) === origin });
  }
  return { notebooks, unread };
}

type At = (address: string) => Promise<Notebook | undefined>;

/** Each notebook is read once in an answer, however many use it. */
function readOnce({ uri, version, snapshot, workspace, pause }: SharingRequest): At {
  const read = new Map<string, Promise<Notebook | undefined>>([
    [plainAddress(uri), Promise.resolve({ uri, version, snapshot })],
  ]);
  return (address) => {
    const notebook = read.get(address) ?? workspace.notebookAt(address, pause);
    read.set(address, notebook);
    return notebook;
  };
}

/**
 * The address of the notebook that says what a word means in another: itself, or that of what it has the word from. To be
 * asked one after another: each is looked at once, and a circle gives nothing.
 */
function findingOrigins({ workspace }: SharingRequest, word: Subject, at: At) {
  const origins = new Map<string, string | undefined>();
  return async function originOf(address: string): Promise<string | undefined> {
    if (origins.has(address)) return origins.get(address);
    origins.set(address, undefined);
    const notebook = await at(address);
    if (!notebook) return undefined;
    const own = defines(notebook, word);
    const path = own ? undefined : pathGiving(notebook, word);
    const giver = path === undefined ? undefined : workspace.resolve(address, path);
    const origin = own ? address : giver && (await originOf(giver));
    origins.set(address, origin);
    return origin;
  };
}

const defines = ({ snapshot }: Notebook, word: Subject): boolean =>
  mentionsOf(snapshot, word).some(({ role }) => role === 'defines');

/** Of several notebooks that give a word, the last one used has the last word. */
const pathGiving = ({ snapshot }: Notebook, { name }: Subject): string | undefined =>
  usesOf(snapshot).findLast((path) => {
    const given = snapshot.shared(path, 'notebook');
    return given && !isAbsent(given) && given.words.has(name);
  });
