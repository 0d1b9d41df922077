/**
 * Tells the editor what was found: soon after a change, once for many changes, always with the version it is about. An
 * editor that asks for itself is only told when to ask again.
 */
import type { PublishDiagnosticsParams } from 'vscode-languageserver';
import type { Client } from './client.ts';
import { foundIn, TEXT_LOST } from './diagnostics.ts';
import { listening } from './dispatch.ts';
import type { Documents } from './documents.ts';
import type { Settings } from './settings.ts';
import type { Workspace } from './workspace/workspace.ts';

/** Milliseconds: changes that come this close together are told of at once. */
const SOON = 20;
/** In place of a uri: an editor that is to ask again asks about all. */
const EVERY = '';

interface PublishDeps {
  readonly documents: Documents;
  readonly workspace: Pick<Workspace, 'whenUsedRead'>;
  readonly settings: (uri: string) => Promise<Settings>;
  readonly client: () => Client;
  readonly send: (told: PublishDiagnosticsParams) => void;
  /** To an editor that asks. */
  readonly askAgain: () => void;
  readonly log: (message: string) => void;
}

export interface Publisher {
  /** The editor has changed the text, and knows that. */
  readonly soon: (uri: string) => void;
  /** Something else than the text has changed. */
  readonly renewed: (uri: string) => void;
  /** Takes back what was told of a notebook that is closed. */
  readonly takeBack: (uri: string) => void;
  readonly stop: () => void;
}

/** `isLast`: nothing else has been put off since. */
type Act = (uri: string, isLast: () => boolean) => void | Promise<void>;

export function createPublisher(around: PublishDeps): Publisher {
  const { documents, workspace, settings, client, send, askAgain, log } = around;
  const timers = new Map<string, ReturnType<typeof setTimeout>>();
  const later = (uri: string, after: number, act: Act) => {
    clearTimeout(timers.get(uri));
    const isLast = () => timers.get(uri) === timer;
    const timer = setTimeout(
      listening(log, () => act(uri, isLast)),
      after,
    );
    timers.set(uri, timer);
  };
  const publish: Act = async (uri, isLast) => {
    // Without what it uses its words are not known: that would be told, and taken back a moment later.
    await workspace.whenUsedRead(uri);
    const wanted = await settings(uri);
    const document = documents.get(uri);
    if (!isLast()) return;
    if (documents.isLost(uri)) return tellLost(uri);
    if (!document) return;
    const { diagnostics, waits } = foundIn(document, wanted, client());
    if (client().asksForFindings) takeBackLost(uri);
    else send({ uri, version: document.version, diagnostics });
    if (waits) later(uri, wanted.holdBack, publishAll);
  };
  /** An editor that asks is told too: all it asks is refused. */
  const toldLost = new Set<string>();
  const tellLost = (uri: string) => {
    toldLost.add(uri);
    send({ uri, diagnostics: [TEXT_LOST] });
  };
  const takeBackLost = (uri: string) => {
    if (toldLost.delete(uri)) send({ uri, diagnostics: [] });
  };
  const publishAll = (uri: string) => {
    documents.settle(uri);
    tell(uri, 0);
  };
  const tell = (uri: string, after: number) => {
    if (!client().asksForFindings) later(uri, after, publish);
    else if (client().asksAgain) later(EVERY, after, askAgain);
  };
  return {
    soon: (uri) => later(uri, SOON, publish),
    renewed: (uri) => tell(uri, SOON),
    takeBack(uri) {
      clearTimeout(timers.get(uri));
      timers.delete(uri);
      if (client().asksForFindings) takeBackLost(uri);
      else send({ uri, diagnostics: [] });
    },
    stop() {
      for (const timer of timers.values()) clearTimeout(timer);
    },
  };
}
