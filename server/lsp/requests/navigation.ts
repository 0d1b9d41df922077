/** Ways through a notebook and between notebooks: where something comes from, where it is named, which file it is. */
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
import { aboutNotebook, type Handler, type NotebookAsked } from '../request.ts';
import { referencesEverywhere } from '../workspace/references-everywhere.ts';
import { runWithPauses } from '../yielding.ts';

const HIGHLIGHTS: Readonly<Record<Mention['role'], DocumentHighlightKind>> = {
  defines: DocumentHighlightKind.Write,
  writes: DocumentHighlightKind.Write,
  reads: DocumentHighlightKind.Read,
};

export const NAVIGATION: readonly Handler[] = [
  aboutNotebook({
    request: DefinitionRequest.type,
    capability: { definitionProvider: true },
    run: async (asked, { position }) => {
      const definition = definitionAt(asked.snapshot, position);
      return definition && linksFor(asked, definition);
    },
    convert: (links, { client }) => (client.definitionLinks ? (links ?? null) : locationsOf(links)),
  }),
  aboutNotebook({
    request: ReferencesRequest.type,
    capability: { referencesProvider: true },
    run: (asked, { position, context }) => referencesEverywhere(asked, position, context.includeDeclaration),
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
    ahead: preparePages,
    run: fileLinks,
    convert: (links) => [...links],
  }),
];

const START = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

/** The file comes last: what the notebook itself says is nearer. A file that a line only names is gone to alone. */
async function linksFor(asked: NotebookAsked, definition: Definition): Promise<DefinitionLink[]> {
  const { asked: originSelectionRange, lines, file } = definition;
  const own = lines.map(
    (range): LocationLink => ({
      originSelectionRange,
      targetUri: asked.uri,
      targetRange: range,
      targetSelectionRange: range,
    }),
  );
  const target = file && (await fileTarget(asked, file.path, file.subject));
  if (!target) return own;
  return [...(file.subject ? own : []), { originSelectionRange, ...target }];
}

async function fileTarget(
  { uri, workspace, pause }: NotebookAsked,
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

/** Only those that are there: a link that leads nowhere is worse than none. */
async function fileLinks({ snapshot, uri, workspace }: NotebookAsked) {
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
