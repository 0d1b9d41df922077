/** What an editor was last told of the meanings in a notebook, so that it need be told only what has changed. */
import type { SemanticTokens, SemanticTokensDelta } from 'vscode-languageserver';
import { editsBetween } from './semantic.ts';

interface Told {
  readonly id: string;
  readonly data: readonly number[];
}

export interface Coloured {
  /** All of it, under a new name. */
  readonly full: (uri: string, data: number[]) => SemanticTokens;
  /** What differs from what was told under that name; all of it where that is not known any more. */
  readonly delta: (uri: string, told: string, data: number[]) => SemanticTokens | SemanticTokensDelta;
  readonly forget: (uri: string) => void;
}

export function createColoured(): Coloured {
  const byUri = new Map<string, Told>();
  let names = 0;
  const full = (uri: string, data: number[]): SemanticTokens => {
    const id = String(++names);
    byUri.set(uri, { id, data });
    return { resultId: id, data };
  };
  return {
    full,
    delta(uri, told, data) {
      const last = byUri.get(uri);
      const { resultId, data: all } = full(uri, data);
      if (last?.id !== told) return { resultId: resultId as string, data: all };
      return { resultId: resultId as string, edits: editsBetween(last.data, data) };
    },
    forget: (uri) => byUri.delete(uri),
  };
}
