/** What is told of one notebook, and under which name: the same name means the same findings. */
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
    'A change could not be read here, so nothing is known of this notebook any more. What you typed is safe in the editor: close the notebook and open it again.',
};

interface DiagnosticsResult {
  readonly diagnostics: ProtocolDiagnostic[];
  /** Something is held back until the typing pauses. */
  readonly waits: boolean;
}

type Written = Pick<OpenDocument, 'uri' | 'snapshot' | 'typed' | 'fresh' | 'edited'>;

export function foundIn(
  { uri, snapshot, typed, fresh, edited }: Written,
  { levels, holdBack }: Settings,
  client: Client,
): DiagnosticsResult {
  let waits = false;
  const leaveOut = (finding: LocatedFinding) => {
    const held = holdBack > 0 && isHeldBack(typed, mayWait, finding);
    waits ||= held;
    return held || isFresh({ snapshot, fresh }, finding.at);
  };
  const found = diagnosticsOf(snapshot, { levels, leaveOut, edited });
  return { diagnostics: found.map((diagnostic) => toDiagnostic(diagnostic, uri, client)), waits };
}

/** What follows from the notation is likely to be put right by the next letters; what the trade says is not. */
const mayWait = (code: string): boolean => ruleOf(code)?.standing === 'notation';

export type Report = FullDocumentDiagnosticReport & { readonly resultId: string };

export function reportOn(document: Written, settings: Settings, client: Client): Report {
  // What is held back would stay so where the editor cannot be told to ask again.
  const { diagnostics } = foundIn(
    document,
    client.asksAgain ? settings : { ...settings, holdBack: 0 },
    client,
  );
  const resultId = nameOf(JSON.stringify(diagnostics));
  return { kind: DocumentDiagnosticReportKind.Full, resultId, items: diagnostics };
}

/** That nothing has changed, where it was told under this name before. */
export function unchangedIf(report: Report, told: string | undefined): Report | Unchanged {
  const { resultId } = report;
  return told === resultId ? { kind: DocumentDiagnosticReportKind.Unchanged, resultId } : report;
}

type Unchanged = UnchangedDocumentDiagnosticReport;

/** FNV-1a over the text, forwards and backwards, with its length: a name that another server gives to the same findings too. */
function nameOf(text: string): string {
  let [forwards, backwards] = [0x811c9dc5, 0x811c9dc5];
  for (let i = 0; i < text.length; i++) {
    forwards = Math.imul(forwards ^ text.charCodeAt(i), 0x01000193);
    backwards = Math.imul(backwards ^ text.charCodeAt(text.length - 1 - i), 0x01000193);
  }
  return [forwards >>> 0, backwards >>> 0, text.length].map((part) => part.toString(36)).join('-');
}
