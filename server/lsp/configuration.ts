/** The reader's settings for each notebook: asked of the editor once, and kept until it tells that they have changed. */
import { type Connection, DidChangeConfigurationNotification } from 'vscode-languageserver';
import type { Client } from './client.ts';
import { listening } from './dispatch.ts';
import { DEFAULT_SETTINGS, type Settings, settingsFrom } from './settings.ts';
import { inTime } from './timeout.ts';

export interface Configured {
  /** Of a notebook or a folder. Known without asking from the second time on; never rejects. */
  readonly of: (uri: string) => Promise<Settings>;
  /** The notebook is closed. */
  readonly forget: (uri: string) => void;
  /** Asks to be told of changes. */
  readonly follow: () => Promise<void>;
}

interface ConfigurationDeps {
  readonly connection: Connection;
  readonly client: () => Client;
  readonly log: (message: string) => void;
  /** Settings are others now, of whichever notebooks. */
  readonly changed: () => void;
}

/** Of the editor's settings. */
const SECTION = 'tappet';

/** Asked for where the editor can be asked, each notebook for itself; taken as they are pushed, for all, where it cannot. */
export function createConfigured({ connection, client, log, changed }: ConfigurationDeps): Configured {
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
      void answer.then(() => {
        known.set(uri, answer);
        changed();
      });
      return DEFAULT_SETTINGS;
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
