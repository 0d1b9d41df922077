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
  ['server/model/entry/', 5],
  ['server/model/state/', 6],
  ['server/model/snapshot/', 7],
  ['server/analysis/figure.ts', 8],
  ['server/analysis/inputs.ts', 9],
  ['server/analysis/boost.ts', 10],
  ['server/analysis/air/', 11],
  ['server/analysis/evidence/', 12],
  ['server/analysis/engine/', 13],
  ['server/analysis/ignition/', 14],
  ['server/analysis/limits/', 15],
  ['server/analysis/trials/', 16],
  ['server/analysis/fuel/', 17],
  ['server/analysis/road/', 18],
  ['server/analysis/upkeep/', 19],
  ['server/analysis/figures.ts', 20],
  ['server/rules/rule.ts', 21],
  ['server/rules/lib/', 22],
  ['server/rules/', 23],
  ['server/rules/table.ts', 24],
  ['server/rules/pages.ts', 25],
  ['server/rules/check.ts', 25],
  ['server/features/', 26],
  ['server/report/', 26],
  ['server/lsp/', 27],
  ['server/cli/', 27],
  ['server/main.', 28],
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
