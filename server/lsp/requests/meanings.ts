/** What the words of a notebook mean: hovers, and colouring by meaning. */
import {
  HoverRequest,
  SemanticTokensDeltaRequest,
  SemanticTokensRangeRequest,
  SemanticTokensRequest,
} from 'vscode-languageserver';
import { filesWanted, hoverAt, prepareHover } from '../../features/hover.ts';
import { semanticTokens } from '../../features/semantic-tokens.ts';
import { preparePages } from '../../model/snapshot/per-page.ts';
import { toHover } from '../convert.ts';
import { filesFor } from '../files.ts';
import { aboutNotebook, type Handler } from '../request.ts';
import { encoded, encodedAll, LEGEND } from '../semantic.ts';

const capability = { semanticTokensProvider: { legend: LEGEND, full: { delta: true }, range: true } };

export const MEANING_REQUESTS: readonly Handler[] = [
  aboutNotebook({
    request: HoverRequest.type,
    capability: { hoverProvider: true },
    prepare: prepareHover,
    run: async ({ snapshot, settings, uri, server }, { position }) => {
      const files = await filesFor(filesWanted(snapshot, position.line), uri, server.readFile);
      return hoverAt(snapshot, position, settings.units, files);
    },
    convert: (hover, { server }) => (hover ? toHover(hover, server.client()) : null),
  }),
  aboutNotebook({
    request: SemanticTokensRequest.type,
    capability,
    prepare: preparePages,
    run: ({ snapshot }) => encodedAll(snapshot),
    convert: (data, { uri, server }) => server.tokenResults.full(uri, data),
  }),
  aboutNotebook({
    request: SemanticTokensDeltaRequest.type,
    capability,
    prepare: preparePages,
    run: ({ snapshot, uri, server }, { previousResultId }) =>
      server.tokenResults.delta(uri, previousResultId, encodedAll(snapshot)),
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
