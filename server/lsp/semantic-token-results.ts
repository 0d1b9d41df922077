/** The last semantic tokens sent for each notebook, for delta requests. */
import type { SemanticTokens, SemanticTokensDelta } from 'vscode-languageserver';
import { editsBetween } from './semantic.ts';

interface SentTokens {
  readonly id: string;
  readonly data: readonly number[];
}

export interface TokenResults {
  /** All tokens, under a new id. */
  readonly full: (uri: string, data: number[]) => SemanticTokens;
  /** What differs from the tokens sent under `previousId`; all of them where that is no longer known. */
  readonly delta: (uri: string, previousId: string, data: number[]) => SemanticTokens | SemanticTokensDelta;
  readonly forget: (uri: string) => void;
}

export function createTokenResults(): TokenResults {
  const sent = new Map<string, SentTokens>();
  let ids = 0;
  const remember = (uri: string, data: number[]): string => {
    const id = String(++ids);
    sent.set(uri, { id, data });
    return id;
  };
  return {
    full: (uri, data) => ({ resultId: remember(uri, data), data }),
    delta(uri, previousId, data) {
      const last = sent.get(uri);
      const resultId = remember(uri, data);
      return last?.id === previousId
        ? { resultId, edits: editsBetween(last.data, data) }
        : { resultId, data };
    },
    forget: (uri) => sent.delete(uri),
  };
}
