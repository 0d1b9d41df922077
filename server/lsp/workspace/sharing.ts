/** Notebooks that share a word: the one that defines it, and those that use it from there. */
import { mentionsOf, type Subject } from '../../features/mentions.ts';
import { usesOf } from '../../model/snapshot/used-notebooks.ts';
import { isAbsent } from '../../model/state/lookup.ts';
import type { NotebookRequestContext } from '../request.ts';
import { plainAddress } from './addresses.ts';
import type { Notebook } from './workspace.ts';

interface Other extends Notebook {
  /** It means the same by the word; where not, it only uses a notebook that does. */
  readonly shares: boolean;
}

interface Others {
  /** Nearest to the one that defines the word first, open or not. */
  readonly notebooks: readonly Other[];
  /** The addresses of those that use it, or one that does, and cannot be read: whether they have the word is not known. */
  readonly unread: readonly string[];
}

/** All that use the one that defines the word, and that one; not the notebook of the request. */
export async function othersSharing(context: NotebookRequestContext, word: Subject): Promise<Others> {
  const { pause, server } = context;
  const { workspace } = server;
  await workspace.whenRead();
  const mine = plainAddress(context.uri);
  const at = readOnce(context);
  const originOf = findingOrigins(context, word, at);
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
function readOnce({ uri, version, snapshot, server, pause }: NotebookRequestContext): At {
  const read = new Map<string, Promise<Notebook | undefined>>([
    [plainAddress(uri), Promise.resolve({ uri, version, snapshot })],
  ]);
  return (address) => {
    const notebook = read.get(address) ?? server.workspace.notebookAt(address, pause);
    read.set(address, notebook);
    return notebook;
  };
}

/**
 * The address of the notebook that defines a word for another: its own, or that of the one it has the word from. To be
 * called one after another: each notebook is looked at once, and a circle has no origin.
 */
function findingOrigins({ server: { workspace } }: NotebookRequestContext, word: Subject, at: At) {
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

/** Of several notebooks that define a word, the last one used counts. */
const pathGiving = ({ snapshot }: Notebook, { name }: Subject): string | undefined =>
  usesOf(snapshot).findLast((path) => {
    const given = snapshot.shared(path, 'notebook');
    return given && !isAbsent(given) && given.words.has(name);
  });
