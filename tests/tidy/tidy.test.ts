/** What nobody should have to remember. */
import { expect, test } from 'vitest';
import { unusedExports } from './exports.ts';
import { imports, projectFiles, ROOT, sources } from './files.ts';
import { staleFiles } from './generated.ts';

const LONGEST_FILE = 300;
const TOP_LEVEL =
  `README.md DEVELOPERS.md CHANGELOG.md LICENSE package.json package-lock.json tsconfig.json build.mjs
  client server grammar samples schemas tests`.split(/\s+/);
/** Written so that this file does not find itself. */
const PLACES = [
  '(?:^|[\\s"\'`(=:])/(?:work|tmp|root|home)/',
  'registry[.](?:npm|yarn)',
  'npmjs[.]',
  'deb[.]debian',
].map((place) => RegExp(place));

const files = projectFiles();
const manifest = JSON.parse(files.get('package.json') ?? '{}');

test('generated files are fresh (npm run generate)', () => expect([...staleFiles(ROOT).keys()]).toEqual([]));

test('the top level has the agreed files and no others', () => {
  const top = new Set([...files.keys()].map((path) => path.split('/')[0] as string));
  expect([...top].filter((name) => !name.startsWith('.') && !TOP_LEVEL.includes(name))).toEqual([]);
  expect(TOP_LEVEL.filter((name) => !top.has(name))).toEqual([]);
});

test(`no program is over ${LONGEST_FILE} lines`, () => {
  const long = [...sources(files)].filter(([, text]) => text.split('\n').length > LONGEST_FILE + 1);
  expect(long.map(([path]) => path)).toEqual([]);
});

test('no path of a machine and no host of a registry is written anywhere', () => {
  const named = [...files].filter(([, text]) => PLACES.some((place) => place.test(text)));
  expect(named.map(([path]) => path)).toEqual([]);
});

test('each of those places would be found', () => {
  const places = ['work', 'tmp', 'root', 'home'].map((name) => ` /${name}/x`);
  const hosts = [
    ['registry', 'npmjs'],
    ['www', 'npmjs', 'org'],
    ['deb', 'debian'],
  ].map((parts) => parts.join('.'));
  for (const text of [...places, ...hosts])
    expect(
      PLACES.some((place) => place.test(text)),
      text,
    ).toBe(true);
});

test('answers are kept by memo.ts alone', () => {
  const own = [...sources(files)].filter(([path]) => /^server\/(?!memo\.ts|lsp\/)/.test(path));
  expect(own.flatMap(([path, text]) => (/new WeakMap\b/.test(text) ? [path] : []))).toEqual([]);
});

test('what is exported is used', () => expect(unusedExports(files)).toEqual([]), 60_000);

test.each<[text: string, others: Readonly<Record<string, string>>, found: readonly string[]]>([
  ['export const a = 1;', {}, ['server/x.ts: a is named nowhere else']],
  ['export const a = 1;', { 'tests/x.test.ts': 'a' }, ['server/x.ts: a is named by tests alone']],
  ['export const a = 1;', { 'tests/tidy/x.ts': 'a' }, []],
  ['export const a = 1;', { 'server/y.ts': 'a' }, []],
  ['export const a = 1;\nexport const b = a;', { 'tests/x.test.ts': 'a', 'server/y.ts': 'b' }, []],
])('%s beside %j', (text, others, found) =>
  expect(unusedExports(new Map(Object.entries({ 'server/x.ts': text, ...others })))).toEqual(found),
);

const dependencies = Object.keys({ ...manifest.dependencies, ...manifest.devDependencies });

test('every dependency is used', () => {
  const programs = [...sources(files)];
  const asTool = (name: string) => files.get('build.mjs')?.includes(`${name}/`) ?? false;
  const asTypes = (name: string) =>
    name.startsWith('@types/') && used(name.slice('@types/'.length), programs);
  expect(dependencies.filter((name) => !asTool(name) && !asTypes(name) && !used(name, programs))).toEqual([]);
});

test('every dependency has its reason in DEVELOPERS.md', () => {
  const reasons = files.get('DEVELOPERS.md') ?? '';
  expect(dependencies.filter((name) => !reasons.includes(`\`${name}\``))).toEqual([]);
});

function used(name: string, programs: readonly (readonly [string, string])[]): boolean {
  return programs.some(([, text]) =>
    imports(text).some(
      (specifier) =>
        specifier === name || specifier.startsWith(`${name}/`) || specifier.startsWith(`${name}:`),
    ),
  );
}
