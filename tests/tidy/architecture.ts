/** Which part of the project may import which, and who may speak to the world outside. */
import { type Files, imports, ownFile, sources } from './files.ts';

/**
 * Rooms from the lowest to the highest: a room may import itself and the rooms of lower levels. The longest prefix of a path
 * names its room.
 */
const LEVELS: readonly (readonly [prefix: string, level: number])[] = [
  ['package.json', 0], // for its version
  ['grammar/', 0],
  ['server/memo.ts', 0],
  ['server/trade/text/', 0],
  ['server/trade/measure/', 1],
  ['server/trade/vocabulary/', 2],
  ['server/trade/practice/', 3],
  ['server/trade/sums/', 4],
  ['server/model/state/trie.ts', 3],
  ['server/model/state/immutable.ts', 4],
  ['server/model/spoken/lexicon.ts', 5], // words alone: what counts on a line hangs on them too
  ['server/model/entry/', 6],
  ['server/model/spoken/', 7],
  ['server/model/state/', 8],
  ['server/model/snapshot/', 9],
  ['server/analysis/figure.ts', 10],
  ['server/analysis/inputs.ts', 11],
  ['server/analysis/boost.ts', 12],
  ['server/analysis/air/', 13],
  ['server/analysis/evidence/', 14],
  ['server/analysis/engine/', 15],
  ['server/analysis/ignition/', 16],
  ['server/analysis/limits/', 17],
  ['server/analysis/trials/', 18],
  ['server/analysis/fuel/', 19],
  ['server/analysis/road/', 20],
  ['server/analysis/upkeep/', 21],
  ['server/analysis/figures.ts', 22],
  ['server/rules/rule.ts', 23],
  ['server/rules/lib/', 24],
  ['server/rules/', 25],
  ['server/rules/table.ts', 26],
  ['server/rules/pages.ts', 27],
  ['server/rules/check.ts', 27],
  ['server/features/', 28],
  ['server/report/', 28],
  ['server/lsp/', 29],
  ['server/cli/', 29],
  ['server/main.', 30],
];

/** Who may import a package (or `node:`), where that is not everybody. Tests and the build file may import anything. */
const FENCED: readonly (readonly [what: RegExp, who: RegExp])[] = [
  [/^node:/, /^server\/(main\.(node|cli)\.ts|cli\/)/],
  [/^vscode$|^vscode-languageclient/, /^client\//],
  [/^vscode-languageserver/, /^server\/(lsp\/|main\.)/],
  [/^chevrotain/, /^grammar\//],
  [/^papaparse/, /^server\/trade\/sums\/log-table\.ts/],
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

/** Rooms on two levels that know nothing of one another. */
const APART: readonly (readonly [a: string, b: string])[] = [['grammar/', 'server/trade/']];

function mayImport(path: string, target: string): boolean {
  if (APART.some(([a, b]) => path.startsWith(b) && target.startsWith(a))) return false;
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
const level = (path: string) => roomOf(path)?.[1];
const partOf = (path: string) => roomOf(path)?.[0] ?? path.split('/')[0];
const roomOf = (path: string) => BY_LENGTH.find(([prefix]) => path.startsWith(prefix));
const BY_LENGTH = [...LEVELS].sort(([a], [b]) => b.length - a.length);
