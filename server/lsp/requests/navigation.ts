/** Ways through a notebook and between notebooks: definitions, references, highlights, links to files. */
import {
  type DefinitionLink,
  DefinitionRequest,
  DocumentHighlightKind,
  DocumentHighlightRequest,
  DocumentLinkRequest,
  type LocationLink,
  type Definition as ProtocolDefinition,
  ReferencesRequest,
} from 'vscode-languageserver';
import { type Definition, definitionAt } from '../../features/definition.ts';
import { linksIn } from '../../features/document-links.ts';
import { type Mention, mentionsOf, type Subject } from '../../features/mentions.ts';
import { highlighting } from '../../features/references.ts';
import { preparePages } from '../../model/snapshot/per-page.ts';
import { aboutNotebook, type Handler, type NotebookRequestContext } from '../request.ts';
import { referencesEverywhere } from '../workspace/references-everywhere.ts';
import { runWithPauses } from '../yielding.ts';

const HIGHLIGHTS: Readonly<Record<Mention['role'], DocumentHighlightKind>> = {
  defines: DocumentHighlightKind.Write,
  writes: DocumentHighlightKind.Write,
  reads: DocumentHighlightKind.Read,
};

export const NAVIGATION_REQUESTS: readonly Handler[] = [
  aboutNotebook({
    request: DefinitionRequest.type,
    capability: { definitionProvider: true },
    run: async (context, { position }) => {
      const definition = definitionAt(context.snapshot, position);
      return definition && linksFor(context, definition);
    },
    convert: (links, { server }) => (server.client().definitionLinks ? (links ?? null) : locationsOf(links)),
  }),
  aboutNotebook({
    request: ReferencesRequest.type,
    capability: { referencesProvider: true },
    run: (request, { position, context }) =>
      referencesEverywhere(request, position, context.includeDeclaration),
    convert: (places) => [...places].flatMap(([uri, ranges]) => ranges.map((range) => ({ uri, range }))),
  }),
  aboutNotebook({
    request: DocumentHighlightRequest.type,
    capability: { documentHighlightProvider: true },
    run: ({ snapshot, pause }, { position }) => runWithPauses(highlighting(snapshot, position), pause),
    convert: (highlights) => highlights.map(({ range, role }) => ({ range, kind: HIGHLIGHTS[role] })),
  }),
  aboutNotebook({
    request: DocumentLinkRequest.type,
    capability: { documentLinkProvider: {} },
    prepare: preparePages,
    run: fileLinks,
    convert: (links) => [...links],
  }),
];

const START = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

/** The lines of the notebook, then the file: the notebook is nearer. For a file that a line only names, the file alone. */
async function linksFor(context: NotebookRequestContext, definition: Definition): Promise<DefinitionLink[]> {
  const { asked: originSelectionRange, lines, file } = definition;
  const own = lines.map(
    (range): LocationLink => ({
      originSelectionRange,
      targetUri: context.uri,
      targetRange: range,
      targetSelectionRange: range,
    }),
  );
  const target = file && (await fileTarget(context, file.path, file.subject));
  if (!target) return own;
  return [...(file.subject ? own : []), { originSelectionRange, ...target }];
}

async function fileTarget(
  { uri, server: { workspace }, pause }: NotebookRequestContext,
  path: string,
  subject: Subject | undefined,
): Promise<LocationLink | undefined> {
  const target = workspace.resolve(uri, path);
  if (target === undefined || !(await workspace.isThere(target))) return undefined;
  const notebook = subject && (await workspace.notebookAt(target, pause));
  const range = (notebook && mentionsOf(notebook.snapshot, subject)[0]?.range) ?? START;
  return { targetUri: notebook?.uri ?? target, targetRange: range, targetSelectionRange: range };
}

const locationsOf = (links: readonly LocationLink[] | undefined): ProtocolDefinition | null =>
  links?.map(({ targetUri, targetSelectionRange }) => ({ uri: targetUri, range: targetSelectionRange })) ??
  null;

/** Links to files that exist: a link that leads nowhere is worse than none. */
async function fileLinks({ snapshot, uri, server: { workspace } }: NotebookRequestContext) {
  const targets = new Map<string, Promise<string | undefined>>();
  const targetOf = async (path: string) => {
    const target = workspace.resolve(uri, path);
    return target !== undefined && (await workspace.isThere(target)) ? target : undefined;
  };
  const links = linksIn(snapshot).map(async ({ range, path }) => {
    const target = targets.get(path) ?? targetOf(path);
    targets.set(path, target);
    return { range, target: await target };
  });
  return (await Promise.all(links)).flatMap(({ range, target }) => (target ? [{ range, target }] : []));
}
