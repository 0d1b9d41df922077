/** Tells the editor what was found: soon after a change, once for many changes, always with the version it is about. */
import type { PublishDiagnosticsParams } from 'vscode-languageserver';
import { diagnosticsOf } from '../features/diagnostics.ts';
import type { LocatedFinding } from '../model/locate.ts';
import { ruleOf } from '../rules/index.ts';
import type { Client } from './client.ts';
import { toDiagnostic } from './convert.ts';
import type { Documents, OpenDocument } from './documents.ts';
import type { Settings } from './settings.ts';
import { isHeldBack } from './typing.ts';

/** Milliseconds: changes that come this close together are told of at once. */
const SOON = 20;

export interface Around {
  readonly documents: Documents;
  readonly settings: () => Settings;
  readonly client: () => Client;
  readonly send: (told: PublishDiagnosticsParams) => void;
}

export interface Publisher {
  readonly soon: (uri: string) => void;
  /** Takes back what was told of a notebook that is closed. */
  readonly takeBack: (uri: string) => void;
  readonly stop: () => void;
}

export function createPublisher({ documents, settings, client, send }: Around): Publisher {
  const timers = new Map<string, ReturnType<typeof setTimeout>>();
  const later = (uri: string, after: number, act: (uri: string) => void) => {
    clearTimeout(timers.get(uri));
    timers.set(uri, setTimeout(act, after, uri));
  };
  const publish = (uri: string) => {
    const document = documents.get(uri);
    if (!document) return;
    const { told, waits } = whatToTell(document, settings(), client());
    send(told);
    if (waits) later(uri, settings().holdBack, publishAll);
  };
  const publishAll = (uri: string) => {
    documents.settle(uri);
    publish(uri);
  };
  return {
    soon: (uri) => later(uri, SOON, publish),
    takeBack(uri) {
      clearTimeout(timers.get(uri));
      timers.delete(uri);
      send({ uri, diagnostics: [] });
    },
    stop() {
      for (const timer of timers.values()) clearTimeout(timer);
    },
  };
}

/** `waits`: something is held back until the typing pauses. */
function whatToTell(
  { uri, version, snapshot, typed }: OpenDocument,
  { levels, holdBack }: Settings,
  client: Client,
): { readonly told: PublishDiagnosticsParams; readonly waits: boolean } {
  let waits = false;
  const leaveOut = (finding: LocatedFinding) => {
    const held = holdBack > 0 && isHeldBack(typed, mayWait, finding);
    waits ||= held;
    return held;
  };
  const found = diagnosticsOf(snapshot, { levels, leaveOut });
  const diagnostics = found.map((diagnostic) => toDiagnostic(diagnostic, uri, client));
  return { told: { uri, version, diagnostics }, waits };
}

/** What follows from the notation is likely to be put right by the next letters; what the trade says is not. */
const mayWait = (code: string): boolean => ruleOf(code)?.standing === 'notation';
