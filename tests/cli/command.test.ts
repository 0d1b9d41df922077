/** What may be typed, and what exit code it gives. */
import { describe, expect, it } from 'vitest';
import { LARGEST_WHOLE } from '../../server/cli/texts.ts';
import { type Files, ran } from './terminal.ts';

const CLEAN = 'session 2026-05-02\n  idle 820 rpm\n';
/** An error, by a rule that stays: a number with a decimal comma. */
const ERROR = 'targets\n  initial 9,5 deg\n';
/** A warning: far outside what a four-stroke idles at. */
const WARNING = 'session 2026-05-02\n  idle 82000 rpm\n';

/** A finding for information: a range written with a hyphen. */
const NOTE = 'session 2026-05-02\n  vacuum 10-12 inHg\n';

const FILES: Files = {
  'note.tappet': NOTE,
  'clean.tappet': CLEAN,
  'error.tappet': ERROR,
  'warning.tappet': WARNING,
  'locked.tappet': 'EACCES',
  'latin.tappet': new Uint8Array([0x69, 0x20, 0xb0]),
  'odd.tappet': 'EMFILE',
};

describe('exit codes', () => {
  it.each<[string, number]>([
    ['check clean.tappet', 0],
    ['check error.tappet', 1],
    ['check error.tappet clean.tappet', 1],
    ['check warning.tappet', 1],
    ['check warning.tappet --fail-on warning', 1],
    ['check warning.tappet --fail-on information', 1],
    ['check note.tappet', 0],
    ['check note.tappet --fail-on information', 1],
    ['check note.tappet --fail-on info', 1],
    ['check warning.tappet --fail-on error', 0],
    ['check error.tappet --fail-on error', 1],
    ['check clean.tappet missing.tappet', 2],
    ['check locked.tappet error.tappet', 2],
    ['check latin.tappet', 2],
    ['check odd.tappet', 2],
    ['check - ', 2],
    ['check clean.tappet --format xml', 2],
    ['check clean.tappet --fail-on hint', 2],
    ['check clean.tappet --colour', 2],
    ['tune clean.tappet', 2],
    ['', 2],
    ['show', 2],
    ['show clean.tappet error.tappet', 2],
    ['show clean.tappet', 0],
    ['show error.tappet', 0],
    ['show clean.tappet --at 2', 0],
    ['show clean.tappet --at 2026-05-02', 0],
    ['show clean.tappet --at 4', 2],
    ['show clean.tappet --at 0', 2],
    ['show clean.tappet --at 2026-05-03', 2],
    ['show clean.tappet --at yesterday', 2],
    ['show missing.tappet', 2],
    ['explain', 0],
    ['explain over-limit', 0],
    ['explain OVER-LIMIT', 0],
    ['explain over-limt', 2],
    ['--version', 0],
    ['--help', 0],
    ['check --help', 0],
    ['show --help', 0],
    ['--no-color check clean.tappet', 0],
    ['check --no-color clean.tappet', 0],
  ])('tappet %s', (commandLine, code) => expect(ran(commandLine, FILES).code).toBe(code));
});

describe('what is complained of', () => {
  it.each<[string, RegExp]>([
    ['check missing.tappet', /^tappet: missing\.tappet: no such file\n$/],
    ['check locked.tappet', /^tappet: locked\.tappet: no permission\n$/],
    ['check latin.tappet', /^tappet: latin\.tappet: not UTF-8 text\n$/],
    ['check odd.tappet', /^tappet: odd\.tappet: can't be read \(EMFILE\)\n$/],
    ['check --format xml', /choices are text, json/],
    ['check --fail-on hint', /choices are error, warning, information\./],
    ['tune', /Try "tappet --help"\./],
    ['tune', /unknown command 'tune'/],
    ['explain over-limt', /^tappet: no rule "over-limt"\. Did you mean over-limit\?/],
    ['show clean.tappet --at 4', /there is no line 4: the notebook has lines 1 to 3\n$/],
    ['show clean.tappet --at 2026-06-01', /no session on 2026-06-01; the nearest are 2026-05-02\n$/],
    ['show clean.tappet --at May', /"May" is not a line number \(17\) or a date \(2026-05-02\)\n$/],
  ])('tappet %s', (commandLine, complaint) => expect(ran(commandLine, FILES).err).toMatch(complaint));

  it('goes to the standard error, so that JSON stays JSON', () => {
    const { out } = ran('check missing.tappet clean.tappet --format json', FILES);
    expect(JSON.parse(out)).toEqual({ files: [{ path: 'clean.tappet', findings: [] }] });
  });
});

describe('which files are checked', () => {
  const BELOW: Files = {
    'boat/b.tappet': CLEAN,
    'boat/a.tappet': CLEAN,
    'boat/notes.txt': ERROR,
    'boat/old/C.TAPPET': CLEAN,
    '.hidden/d.tappet': ERROR,
    'node_modules/e.tappet': ERROR,
    'top.tappet': CLEAN,
    '-': CLEAN,
  };
  it.each<[string, readonly string[]]>([
    ['check', ['boat/a.tappet', 'boat/b.tappet', 'boat/old/C.TAPPET', 'top.tappet']],
    ['check boat', ['boat/a.tappet', 'boat/b.tappet', 'boat/old/C.TAPPET']],
    ['check boat/old', ['boat/old/C.TAPPET']],
    ['check top.tappet boat/b.tappet top.tappet', ['top.tappet', 'boat/b.tappet']],
    ['check boat/notes.txt', ['boat/notes.txt']],
    ['check -', ['-']],
  ])('tappet %s', (commandLine, paths) => {
    const { out } = ran(`${commandLine} --format json`, BELOW);
    expect(JSON.parse(out).files.map(({ path }: { path: string }) => path)).toEqual(paths);
  });

  it('tells when there is none', () => {
    expect(ran('check', { 'a.txt': '' })).toMatchObject({
      code: 2,
      err: 'tappet: the current folder: no notebooks (*.tappet) here\n',
    });
  });
});

describe('help and version', () => {
  it('prints the version and nothing else', () => expect(ran('--version').out).toBe('9.8.7\n'));

  it('gives examples that are commands', () => {
    const examples = ran('--help').out.match(/^ {2}tappet \w+ .*?(?= {2}|$)/gm) ?? [];
    expect(examples.length).toBeGreaterThan(4);
    const files = { 'boat.tappet': `${CLEAN}\n`.repeat(10), '-': CLEAN };
    for (const example of examples) {
      const typed = example
        .trim()
        .replace(/^tappet /, '')
        .replace(/ <.*/, '');
      expect(ran(typed, files), typed).toMatchObject({ code: 0, err: '' });
    }
  });

  it.each([50, 60, 80, 120])('fits %i columns', (columns) => {
    const { out } = ran('--help', {}, { columns });
    const of = ran('check --help', {}, { columns }).out;
    for (const line of [...out.split('\n'), ...of.split('\n')])
      expect(line.length, line).toBeLessThanOrEqual(columns);
  });
});

it('a notebook that is too large to be held whole is refused by what must hold it, and checked all the same', () => {
  const most = `session 2026-05-02\n  initial 9 F\n`;
  const filler = `;${'x'.repeat(1900)}\n`;
  const text = most + filler.repeat(Math.ceil(LARGEST_WHOLE / filler.length));
  const files = { 'long.tappet': text };
  for (const line of ['show long.tappet', 'format long.tappet', 'format --check long.tappet']) {
    const { code, out, err } = ran(line, files);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(
      /^tappet: long\.tappet: too large: more than 16 MB\. "tappet check" can read it\. Split it/,
    );
  }
  const checked = ran('check long.tappet', files);
  expect(checked).toMatchObject({ code: 1, err: '' });
  expect(checked.out).toContain('wrong-unit');
  expect(ran('show long.tappet', { 'long.tappet': text.slice(0, LARGEST_WHOLE) }).code).toBe(0);
});
