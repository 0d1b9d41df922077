/**
 * Publishes findings: soon after a change, once for many changes, always with the version they are about. An editor that
 * pulls findings is only asked to pull them again.
 */
import type { PublishDiagnosticsParams } from 'vscode-languageserver';
import { foundIn, TEXT_LOST } from './diagnostics.ts';
import { listening } from './dispatch.ts';
import type { Server } from './server.ts';

/** Milliseconds: changes that come this close together are published once. */
const SOON = 20;
/** In place of a URI: a refresh is for all notebooks. */
const EVERY = '';

type PublishDeps = Pick<Server, 'documents' | 'workspace' | 'settings' | 'client' | 'log'> & {
  readonly send: (findings: PublishDiagnosticsParams) => void;
  /** Asks an editor that pulls findings to pull them again. */
  readonly refresh: () => void;
};

export interface Publisher {
  /** The editor has changed the text, so it pulls by itself where it does. */
  readonly soon: (uri: string) => void;
  /** Something else than the text has changed. */
  readonly renewed: (uri: string) => void;
  /** Removes the findings of a notebook that is closed. */
  readonly takeBack: (uri: string) => void;
  readonly stop: () => void;
}

/** `isLatest`: nothing has been scheduled for this notebook since. */
type Action = (uri: string, isLatest: () => boolean) => void | Promise<void>;

export function createPublisher(deps: PublishDeps): Publisher {
  const { documents, workspace, settings, client, send, refresh, log } = deps;
  const timers = new Map<string, ReturnType<typeof setTimeout>>();
  const schedule = (uri: string, after: number, act: Action) => {
    clearTimeout(timers.get(uri));
    const isLatest = () => timers.get(uri) === timer;
    const timer = setTimeout(
      listening(log, () => act(uri, isLatest)),
      after,
    );
    timers.set(uri, timer);
  };
  const publish: Action = async (uri, isLatest) => {
    // Its own words may be in notebooks it uses: without them findings would come and go a moment later.
    await workspace.whenUsedRead(uri);
    const ofNotebook = await settings(uri);
    const document = documents.get(uri);
    if (!isLatest()) return;
    if (documents.isLost(uri)) return sendLost(uri);
    if (!document) return;
    const { diagnostics, waits } = foundIn(document, ofNotebook, client());
    if (client().pullsFindings) takeBackLost(uri);
    else send({ uri, version: document.version, diagnostics });
    if (waits) schedule(uri, ofNotebook.holdBack, publishAll);
  };
  /** Sent even to an editor that pulls: every request about such a notebook is refused. */
  const lostSent = new Set<string>();
  const sendLost = (uri: string) => {
    lostSent.add(uri);
    send({ uri, diagnostics: [TEXT_LOST] });
  };
  const takeBackLost = (uri: string) => {
    if (lostSent.delete(uri)) send({ uri, diagnostics: [] });
  };
  const publishAll = (uri: string) => {
    documents.settle(uri);
    renew(uri, 0);
  };
  const renew = (uri: string, after: number) => {
    if (!client().pullsFindings) schedule(uri, after, publish);
    else if (client().refreshesFindings) schedule(EVERY, after, refresh);
  };
  return {
    soon: (uri) => schedule(uri, SOON, publish),
    renewed: (uri) => renew(uri, SOON),
    takeBack(uri) {
      clearTimeout(timers.get(uri));
      timers.delete(uri);
      if (client().pullsFindings) takeBackLost(uri);
      else send({ uri, diagnostics: [] });
    },
    stop() {
      for (const timer of timers.values()) clearTimeout(timer);
    },
  };
}
