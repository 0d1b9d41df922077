/** The findings of one notebook in the protocol's terms, under an id: the same id means the same findings. */
import {
  DiagnosticSeverity,
  DocumentDiagnosticReportKind,
  type FullDocumentDiagnosticReport,
  type Diagnostic as ProtocolDiagnostic,
  type UnchangedDocumentDiagnosticReport,
} from 'vscode-languageserver';
import { diagnosticsOf } from '../features/diagnostics.ts';
import type { LocatedFinding } from '../model/snapshot/finding.ts';
import { ruleOf } from '../rules/check.ts';
import type { Client } from './client.ts';
import { SOURCE, toDiagnostic } from './convert.ts';
import type { OpenDocument } from './documents.ts';
import { isFresh } from './fresh-template.ts';
import { isHeldBack } from './lines-being-typed.ts';
import type { Settings } from './settings.ts';

/** Instead of any finding of a notebook whose text is lost. */
export const TEXT_LOST: ProtocolDiagnostic & { readonly message: string } = {
  range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
  severity: DiagnosticSeverity.Error,
  source: SOURCE,
  message:
    'This notebook is not being checked: a change to it could not be processed. What you typed is safe in the editor; close the notebook and open it again.',
};

interface DiagnosticsResult {
  readonly diagnostics: ProtocolDiagnostic[];
  /** Some findings are held back until the typing pauses. */
  readonly waits: boolean;
}

type CheckedDocument = Pick<OpenDocument, 'uri' | 'snapshot' | 'typed' | 'fresh' | 'edited'>;

export function foundIn(
  { uri, snapshot, typed, fresh, edited }: CheckedDocument,
  { levels, holdBack }: Settings,
  client: Client,
): DiagnosticsResult {
  let waits = false;
  const leaveOut = (finding: LocatedFinding) => {
    const held = holdBack > 0 && isHeldBack(typed, mayWait, finding);
    waits ||= held;
    return held || isFresh({ snapshot, fresh }, finding.at);
  };
  const shown = diagnosticsOf(snapshot, { levels, leaveOut, edited });
  return { diagnostics: shown.map((diagnostic) => toDiagnostic(diagnostic, uri, client)), waits };
}

/** Findings about the notation are likely to go away with the next letters; those about the trade are not. */
const mayWait = (code: string): boolean => ruleOf(code)?.standing === 'notation';

export type Report = FullDocumentDiagnosticReport & { readonly resultId: string };

export function reportOn(document: CheckedDocument, settings: Settings, client: Client): Report {
  // Findings held back would never come where the editor cannot be told to pull again.
  const { diagnostics } = foundIn(
    document,
    client.refreshesFindings ? settings : { ...settings, holdBack: 0 },
    client,
  );
  const resultId = idOf(JSON.stringify(diagnostics));
  return { kind: DocumentDiagnosticReportKind.Full, resultId, items: diagnostics };
}

/** "Unchanged", where the editor has the report of this id already. */
export function unchangedIf(report: Report, previousId: string | undefined): Report | Unchanged {
  const { resultId } = report;
  return previousId === resultId ? { kind: DocumentDiagnosticReportKind.Unchanged, resultId } : report;
}

type Unchanged = UnchangedDocumentDiagnosticReport;

/** FNV-1a over the text, forwards and backwards, with its length: another server gives the same findings the same id. */
function idOf(text: string): string {
  let [forwards, backwards] = [0x811c9dc5, 0x811c9dc5];
  for (let i = 0; i < text.length; i++) {
    forwards = Math.imul(forwards ^ text.charCodeAt(i), 0x01000193);
    backwards = Math.imul(backwards ^ text.charCodeAt(text.length - 1 - i), 0x01000193);
  }
  return [forwards >>> 0, backwards >>> 0, text.length].map((part) => part.toString(36)).join('-');
}
