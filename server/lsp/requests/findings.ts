/** Findings: those of a notebook, those of the whole workspace, and the actions that fix them. */
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

/** Findings in a notebook may depend on the notebooks it uses. */
const capability = {
  diagnosticProvider: { identifier: 'tappet', interFileDependencies: true, workspaceDiagnostics: true },
};

export const FINDING_REQUESTS: readonly Handler[] = [
  aboutNotebook({
    request: DocumentDiagnosticRequest.type,
    capability,
    withUsed: true,
    run: ({ document, settings, server }, { previousResultId }) =>
      unchangedIf(reportOn(document, settings, server.client()), previousResultId),
    convert: (report) => report,
  }),
  aboutWorkspace({
    request: WorkspaceDiagnosticRequest.type,
    capability,
    run: ({ server, pause }, { previousResultIds }) =>
      server.reportAll(new Map(previousResultIds.map(({ uri, value }) => [uri, value])), pause),
    convert: (items) => ({ items }),
  }),
  aboutNotebook({
    request: CodeActionRequest.type,
    capability: { codeActionProvider: { codeActionKinds: [...ACTION_KINDS] } },
    run: ({ snapshot, settings, uri, server }, { range, context: { only } }) =>
      codeActionsAt(snapshot, range, {
        levels: settings.levels,
        units: settings.units,
        indent: settings.format.indent,
        today: today(),
        only,
        elsewhere: (path) => server.workspace.elsewhere(uri, path),
      }),
    convert: (actions, { document, server }) => toCodeActions(actions, document, server.client()),
  }),
];
