/** What README.md and DEVELOPERS.md say of files and folders, held to those that are there. */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { imports, ownFile, projectFiles, ROOT } from './files.ts';

const files = projectFiles();
const textOf = (path: string): string => files.get(path) ?? '';
const DEVELOPERS = textOf('DEVELOPERS.md');
/** What is built is not there until it is built, and capitals stand for a name to be chosen. */
const NOT_THERE = /^(?:dist|out|\.cache)\/|[A-Z]{3,}/;

const quoted = (text: string): readonly string[] =>
  [...text.matchAll(/`([^`\s]+)`/g)].map((match) => match[1] as string);
const paths = [
  ...new Set(['README.md', 'DEVELOPERS.md', 'CHANGELOG.md'].flatMap((path) => quoted(textOf(path)))),
].filter(
  (text) =>
    /^(?:server|client|grammar|tests|samples)\//.test(text) && !NOT_THERE.test(text) && !text.includes('*'),
);

test('there are paths to look at', () => expect(paths.length).toBeGreaterThan(20));
test.each(paths)('%s is there', (path) => expect(existsSync(join(ROOT, path))).toBe(true));

/** Names of files without their folder: each is the end of the path of some file. */
const names = [...new Set(quoted(DEVELOPERS))].filter(
  (text) => /^[\w./-]+\.(?:ts|mjs|md|json)$/.test(text) && !NOT_THERE.test(text.replace(/[A-Z]+\.md$/, '')),
);
test('there are names to look at', () => expect(names.length).toBeGreaterThan(40));
test.each(names)('%s, named in DEVELOPERS.md, exists', (name) =>
  expect([...files.keys()].some((path) => path === name || path.endsWith(`/${name}`))).toBe(true),
);

/** Cells of the table rows that have so many. */
const rows = (cells: number): readonly (readonly string[])[] =>
  DEVELOPERS.split('\n')
    .filter((line) => line.startsWith('| '))
    .map((line) => line.slice(2, -2).split(' | '))
    .filter((row) => row.length === cells);

test('the folders of tests are those that DEVELOPERS.md names', () => {
  const named = rows(2).find(([name]) => name === '`tests/`')?.[1] ?? '';
  const folders = readdirSync(join(ROOT, 'tests'), { withFileTypes: true });
  expect(named.replaceAll('`', '').split(' ').toSorted()).toEqual(folders.map(({ name }) => name).toSorted());
});

const asked = rows(3)
  .filter((row) => row[2]?.includes('`requests/'))
  .flatMap(([, features = '', places = '']) =>
    quoted(features).map((feature) => [feature, quoted(places)] as const),
  );

/** Asked by the others, not by the protocol. */
const HELPERS = ['mentions.ts'];

test('every feature that a request needs is in the table', () => {
  expect(asked.length).toBeGreaterThan(10);
  const rowFiles = [...files.keys()].filter((path) => /^server\/lsp\/requests\/[a-z]+\.ts$/.test(path));
  const told = new Set([...HELPERS, ...asked.map(([feature]) => feature)]);
  expect(rowFiles.flatMap(featuresOf).filter((feature) => !told.has(feature))).toEqual([]);
});

// What was found is also told unasked, so its row asks by way of what publishes it.
test.each(asked.filter(([feature]) => feature !== 'diagnostics.ts'))('%s is asked in %s', (feature, places) =>
  expect(places.some((place) => featuresOf(`server/lsp/${place}`).includes(feature))).toBe(true),
);

function featuresOf(path: string): readonly string[] {
  return imports(textOf(path)).flatMap((specifier) => {
    const file = ownFile(path, specifier) ?? '';
    return file.startsWith('server/features/') ? [file.slice('server/features/'.length)] : [];
  });
}

const laws = rows(2).filter(([law]) => /^\d+\. /.test(law ?? ''));
const lawTests = [...files].filter(([path]) => /^tests\/(?:laws|rules)\//.test(path)).map(([, text]) => text);

test('there are twelve laws', () => expect(laws).toHaveLength(12));
test.each(
  laws.flatMap(([law = '', held = '']) =>
    (/"(law \d+)"/.exec(held) ?? []).slice(1).map((name) => [law, name]),
  ),
)('%s is held by a test called %s', (law, name) => {
  expect(name).toBe(`law ${Number.parseInt(law as string, 10)}`);
  expect(lawTests.some((text) => text.includes(`'${name}`))).toBe(true);
});

/** The README is also the page of the extension, where nothing else of the repository is. */
const pictures = [...textOf('README.md').matchAll(/!\[[^\]]*\]\(([^)]+)\)/g)].map(
  (match) => match[1] as string,
);

test('the README has a picture', () => expect(pictures.length).toBeGreaterThan(0));
test.each(pictures)('%s is packed with the extension', (picture) =>
  expect(textOf('.vscodeignore').split('\n')).toContain(`!${picture}`),
);

const links = ['README.md', 'DEVELOPERS.md'].flatMap((path) =>
  [...textOf(path).matchAll(/(?<!!)\[[^\]]+\]\((?!https?:)([^)#]+)/g)].map((match) => match[1] as string),
);
test.each(links)('%s, which is linked, is there', (link) => expect(existsSync(join(ROOT, link))).toBe(true));
