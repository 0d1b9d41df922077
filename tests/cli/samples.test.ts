/** The samples as a person sees them, and as another program does. */
/// <reference types="node" />
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { expectGolden } from './golden.ts';
import { type Files, ran } from './terminal.ts';

const FOLDER = join(import.meta.dirname, '../../samples');
const NAMES = readdirSync(FOLDER).filter((name) => name.endsWith('.tappet'));
const NAMED = ['logs', 'photos'].flatMap((folder) =>
  readdirSync(join(FOLDER, folder)).map((name) => `${folder}/${name}`),
);
const FILES: Files = Object.fromEntries(
  [...NAMES, ...NAMED].map((name) => [`samples/${name}`, readFileSync(join(FOLDER, name), 'utf8')]),
);
const WINDOW = { columns: 100 };

it('nothing is found in the page that is shared', () =>
  expect(ran('check samples/shop-limits.tappet', FILES).code).toBe(0));

it('there are three or more, one of at least twelve sessions', () => {
  const sessions = Object.values(FILES).map((text) => String(text).match(/^session /gm)?.length ?? 0);
  expect(sessions.length).toBeGreaterThanOrEqual(3);
  expect(Math.max(...sessions)).toBeGreaterThanOrEqual(12);
});

/** A page that others use has no sessions, and nothing wrong in it. */
const NOTEBOOKS = NAMES.filter((name) => /^session /m.test(String(FILES[`samples/${name}`])));

describe.each(NOTEBOOKS)('%s', (name) => {
  const bare = name.replace('.tappet', '');

  it('check', () => expectGolden(`${bare}.check.txt`, ran(`check samples/${name}`, FILES, WINDOW).out));

  it('check as JSON', () => {
    const { out } = ran(`check samples/${name} --format json`, FILES);
    expect(JSON.parse(out).files).toHaveLength(1);
    expectGolden(`${bare}.check.json`, out);
  });

  it('show', () => expectGolden(`${bare}.show.txt`, ran(`show samples/${name}`, FILES, WINDOW).out));

  it('has a few findings, meant to be there', () => {
    const [file] = JSON.parse(ran(`check samples/${name} --format json`, FILES).out).files;
    const told = file.findings.filter(({ severity }: { severity: string }) => severity !== 'hint');
    expect(told.length).toBeGreaterThanOrEqual(1);
    // A long notebook may have more of them: one in three sessions.
    const sessions = String(FILES[`samples/${name}`]).match(/^session /gm)?.length ?? 0;
    expect(told.length).toBeLessThanOrEqual(Math.max(6, sessions / 3));
  });

  it.each([40, 64])('show fits %i columns', (columns) => {
    const { out } = ran(`show samples/${name}`, FILES, { columns });
    for (const line of out.split('\n')) expect(line.length, line).toBeLessThanOrEqual(columns);
  });

  it.each([60, 80])('check fits %i columns', (columns) => {
    const { out } = ran(`check samples/${name}`, FILES, { columns });
    for (const line of out.split('\n')) expect(line.length, line).toBeLessThanOrEqual(columns);
  });
});
