/** The reader's settings for each notebook: asked of the editor once, and kept until it tells that they have changed. */
import { type Connection, DidChangeConfigurationNotification } from 'vscode-languageserver';
import { listening } from './answering.ts';
import type { Client } from './client.ts';
import { DEFAULT_SETTINGS, type Settings, settingsFrom } from './settings.ts';

export interface Configured {
  /** Of a notebook or a folder. Known without asking from the second time on; never rejects. */
  readonly of: (uri: string) => Promise<Settings>;
  /** The notebook is closed. */
  readonly forget: (uri: string) => void;
  /** Asks to be told of changes. */
  readonly follow: () => Promise<void>;
}

interface Around {
  readonly connection: Connection;
  readonly client: () => Client;
  readonly log: (message: string) => void;
  /** Settings are others now, of whichever notebooks. */
  readonly changed: () => void;
}

/** Of the editor's settings. */
const SECTION = 'tappet';
/** Milliseconds after which an editor that does not answer is served without. */
const LONGEST_WAIT = 2000;

/** Asked for where the editor can be asked, each notebook for itself; taken as they are pushed, for all, where it cannot. */
export function createConfigured({ connection, client, log, changed }: Around): Configured {
  const known = new Map<string, Promise<Settings>>();
  let pushed = DEFAULT_SETTINGS;
  const asked = async (uri: string): Promise<Settings> => {
    try {
      return settingsFrom(await connection.workspace.getConfiguration({ scopeUri: uri, section: SECTION }));
    } catch (error) {
      log(String(error));
      return DEFAULT_SETTINGS;
    }
  };
  const ask = (uri: string): Promise<Settings> => {
    const answer = asked(uri);
    return inTime(answer, () => {
      known.set(uri, answer);
      changed();
    });
  };
  connection.onDidChangeConfiguration(
    listening(log, ({ settings }) => {
      known.clear();
      pushed = settingsFrom(settings?.[SECTION]);
      changed();
    }),
  );
  return {
    of(uri) {
      if (!client().configuration) return Promise.resolve(pushed);
      const settings = known.get(uri) ?? ask(uri);
      known.set(uri, settings);
      return settings;
    },
    forget: (uri) => known.delete(uri),
    async follow() {
      if (client().asksForRegistration)
        await connection.client.register(DidChangeConfigurationNotification.type, { section: SECTION });
    },
  };
}

/** What nothing is set to where the answer takes too long; `late` is called once that comes after all. */
async function inTime(answer: Promise<Settings>, late: () => void): Promise<Settings> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const wait = new Promise<undefined>((resolve) => {
    timer = setTimeout(resolve, LONGEST_WAIT, undefined);
  });
  const settings = await Promise.race([answer, wait]);
  clearTimeout(timer);
  if (settings) return settings;
  answer.then(late);
  return DEFAULT_SETTINGS;
}
