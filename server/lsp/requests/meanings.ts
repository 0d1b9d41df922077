/** What an editor asks when it colours by meaning. */
import {
  SemanticTokensDeltaRequest,
  SemanticTokensRangeRequest,
  SemanticTokensRequest,
} from 'vscode-languageserver';
import { semanticTokens } from '../../features/semantic-tokens.ts';
import { preparePages } from '../../model/snapshot/per-page.ts';
import { aboutNotebook, type Handler } from '../request.ts';
import { encoded, encodedAll, LEGEND } from '../semantic.ts';

const capability = { semanticTokensProvider: { legend: LEGEND, full: { delta: true }, range: true } };

export const MEANINGS_ASKED: readonly Handler[] = [
  aboutNotebook({
    request: SemanticTokensRequest.type,
    capability,
    ahead: preparePages,
    run: ({ snapshot }) => encodedAll(snapshot),
    convert: (data, { uri, coloured }) => coloured.full(uri, data),
  }),
  aboutNotebook({
    request: SemanticTokensDeltaRequest.type,
    capability,
    ahead: preparePages,
    run: ({ snapshot, uri, coloured }, { previousResultId }) =>
      coloured.delta(uri, previousResultId, encodedAll(snapshot)),
    convert: (tokens) => tokens,
  }),
  aboutNotebook({
    request: SemanticTokensRangeRequest.type,
    capability,
    run: ({ snapshot }, { range: { start, end } }) =>
      encoded(semanticTokens(snapshot, start.line, end.line + 1)),
    convert: (data) => ({ data }),
  }),
];
