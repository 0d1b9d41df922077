/** What an editor asks about what was found: the findings themselves, and what can be done about them. */
import {
  CodeActionRequest,
  DocumentDiagnosticRequest,
  WorkspaceDiagnosticRequest,
} from 'vscode-languageserver';
import { codeActionsAt } from '../../features/code-actions.ts';
import { today } from '../clock.ts';
import { ACTION_KINDS, toCodeActions } from '../convert-actions.ts';
import { reportOn, unchangedIf } from '../diagnostics.ts';
import { aboutNotebook, aboutWorkspace, type Handler } from '../request.ts';

/** What is found in a notebook may depend on those that it uses. */
const capability = {
  diagnosticProvider: { identifier: 'tappet', interFileDependencies: true, workspaceDiagnostics: true },
};

export const FINDINGS: readonly Handler[] = [
  aboutNotebook({
    request: DocumentDiagnosticRequest.type,
    capability,
    withUsed: true,
    run: ({ document, settings, client }, { previousResultId }) =>
      unchangedIf(reportOn(document, settings, client), previousResultId),
    convert: (report) => report,
  }),
  aboutWorkspace({
    request: WorkspaceDiagnosticRequest.type,
    capability,
    run: ({ everyReport, pause }, { previousResultIds }) =>
      everyReport(new Map(previousResultIds.map(({ uri, value }) => [uri, value])), pause),
    convert: (items) => ({ items }),
  }),
  aboutNotebook({
    request: CodeActionRequest.type,
    capability: { codeActionProvider: { codeActionKinds: [...ACTION_KINDS] } },
    run: ({ snapshot, settings, uri, workspace }, { range, context: { only } }) =>
      codeActionsAt(snapshot, range, {
        levels: settings.levels,
        units: settings.units,
        indent: settings.format.indent,
        today: today(),
        only,
        elsewhere: (path) => workspace.elsewhere(uri, path),
      }),
    convert: (actions, { document, client }) => toCodeActions(actions, document, client),
  }),
];
