/** Which part of the project may import which, and who may speak to the world outside. */
import { type Files, imports, ownFile, sources } from './files.ts';

/** A part may import itself and the parts of a lower level. */
const LEVELS: readonly (readonly [prefix: string, level: number])[] = [
  ['package.json', 0], // for its version
  ['grammar/', 0],
  ['server/trade/', 0],
  ['server/model/', 1],
  ['server/rules/', 2],
  ['server/features/', 3],
  ['server/report/', 3],
  ['server/lsp/', 4],
  ['server/cli/', 4],
  ['server/main.', 5],
];

/** Who may import a package (or `node:`), where that is not everybody. Tests and the build file may import anything. */
const FENCED: readonly (readonly [what: RegExp, who: RegExp])[] = [
  [/^node:/, /^server\/(main\.(node|cli)\.ts|cli\/)/],
  [/^vscode$|^vscode-languageclient/, /^client\//],
  [/^vscode-languageserver/, /^server\/(lsp\/|main\.)/],
  [/^chevrotain/, /^grammar\//],
  [/^papaparse/, /^server\/trade\/log-table\.ts/],
  [/^commander/, /^server\/(cli\/|main\.cli)/],
];

/** Names that only Node has; the same fence as for its modules. */
const NODE_NAMES = /\b(?:process\.|Buffer\b|__dirname\b|require\()/;

/** One line for each import that goes against the arrows. */
export function wrongArrows(files: Files): readonly string[] {
  return eachImport(files).flatMap(({ path, specifier, target }) => {
    const wrong = target === undefined ? !mayUse(path, specifier) : !mayImport(path, target);
    return wrong ? [`${path} imports ${target ?? specifier}`] : [];
  });
}

/** One line for each way round from a file back to itself. */
export function cycles(files: Files): readonly string[] {
  const targets = new Map<string, string[]>();
  for (const { path, target } of eachImport(files))
    if (target) targets.set(path, [...(targets.get(path) ?? []), target]);
  const found: string[] = [];
  const done = new Set<string>();
  const walk = (path: string, way: readonly string[]) => {
    if (way.includes(path)) found.push([...way.slice(way.indexOf(path)), path].join(' -> '));
    if (done.has(path)) return;
    done.add(path);
    for (const target of targets.get(path) ?? []) walk(target, [...way, path]);
  };
  for (const path of targets.keys()) walk(path, []);
  return found;
}

/** Pure files that use a name only Node has, and imports of ours that do not say `.ts`. */
export function impurities(files: Files): readonly string[] {
  const named = ours(files).flatMap(([path, text]) => {
    const use = mayUse(path, 'node:')
      ? null
      : NODE_NAMES.exec(text.replace(/\/\*[\s\S]*?\*\/|\/\/.*|'[^'\n]*'|`[^`]*`/g, ''));
    return use ? [`${path} uses ${use[0]}`] : [];
  });
  const endings = eachImport(files).filter(({ target }) => target && !/\.(ts|json)$/.test(target));
  return [...named, ...endings.map(({ path, target }) => `${path} imports ${target} without its ending`)];
}

function mayImport(path: string, target: string): boolean {
  if (partOf(path) === partOf(target)) return true;
  const [from, to] = [level(path), level(target)];
  return from !== undefined && to !== undefined && to < from;
}

function mayUse(path: string, specifier: string): boolean {
  return FENCED.every(([what, who]) => !what.test(specifier) || who.test(path));
}

function eachImport(files: Files) {
  return ours(files).flatMap(([path, text]) =>
    imports(text).map((specifier) => ({ path, specifier, target: ownFile(path, specifier) })),
  );
}

const ours = (files: Files) => [...sources(files)].filter(([path]) => !/^(tests\/|build\.mjs$)/.test(path));
const level = (path: string) => LEVELS.find(([prefix]) => path.startsWith(prefix))?.[1];
const partOf = (path: string) =>
  LEVELS.find(([prefix]) => path.startsWith(prefix))?.[0] ?? path.split('/')[0];
