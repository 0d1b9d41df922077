/** The user's settings for each notebook: requested from the editor once, and cached until it reports a change. */
import { type Connection, DidChangeConfigurationNotification } from 'vscode-languageserver';
import type { Client } from './client.ts';
import { listening } from './dispatch.ts';
import { DEFAULT_SETTINGS, type Settings, settingsFrom } from './settings.ts';
import { inTime } from './timeout.ts';

export interface Configuration {
  /** The settings for a notebook or a folder. Requested from the editor the first time only; never rejects. */
  readonly of: (uri: string) => Promise<Settings>;
  /** The notebook is closed. */
  readonly forget: (uri: string) => void;
  /** Registers for changes. */
  readonly follow: () => Promise<void>;
}

interface ConfigurationDeps {
  readonly connection: Connection;
  readonly client: () => Client;
  readonly log: (message: string) => void;
  /** Settings of some notebooks have changed. */
  readonly changed: () => void;
}

/** The section of the editor's settings. */
const SECTION = 'tappet';

/** Requested for each notebook where the editor can answer that; else the settings it pushes, for all notebooks. */
export function createConfiguration({ connection, client, log, changed }: ConfigurationDeps): Configuration {
  const cache = new Map<string, Promise<Settings>>();
  let pushed = DEFAULT_SETTINGS;
  const requestFor = async (uri: string): Promise<Settings> => {
    try {
      return settingsFrom(await connection.workspace.getConfiguration({ scopeUri: uri, section: SECTION }));
    } catch (error) {
      log(String(error));
      return DEFAULT_SETTINGS;
    }
  };
  const requestInTime = (uri: string): Promise<Settings> => {
    const answer = requestFor(uri);
    return inTime(answer, () => {
      void answer.then(() => {
        cache.set(uri, answer);
        changed();
      });
      return DEFAULT_SETTINGS;
    });
  };
  connection.onDidChangeConfiguration(
    listening(log, ({ settings }) => {
      cache.clear();
      pushed = settingsFrom(settings?.[SECTION]);
      changed();
    }),
  );
  return {
    of(uri) {
      if (!client().configuration) return Promise.resolve(pushed);
      const settings = cache.get(uri) ?? requestInTime(uri);
      cache.set(uri, settings);
      return settings;
    },
    forget: (uri) => cache.delete(uri),
    async follow() {
      if (client().registersForSettings)
        await connection.client.register(DidChangeConfigurationNotification.type, { section: SECTION });
    },
  };
}
