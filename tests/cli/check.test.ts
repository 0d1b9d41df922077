/** What `check` writes: JSON for programs, text for people, and a clear outcome for any file. */
import { describe, expect, it } from 'vitest';
import { dedent } from '../harness/fixture.ts';
import { ran } from './terminal.ts';

const TYPO = 'session 2026-05-02\n  initial 9,5 deg\n';

describe('as JSON', () => {
  it('has the agreed form, lines and characters from zero', () => {
    const { files } = JSON.parse(ran('check a.tappet --format json', { 'a.tappet': TYPO }).out);
    expect(files).toEqual([
      {
        path: 'a.tappet',
        findings: [
          {
            code: 'comma-number',
            severity: 'error',
            message: expect.stringContaining('9.5'),
            range: { start: { line: 1, character: 10 }, end: { line: 1, character: 13 } },
          },
        ],
      },
    ]);
  });

  it.each(['check', 'check a.tappet b.tappet', 'check b.tappet'])('%s gives one object', (commandLine) => {
    const { out } = ran(`${commandLine} --format json`, { 'a.tappet': TYPO, 'b.tappet': '' });
    expect(Object.keys(JSON.parse(out))).toEqual(['files']);
  });

  it('is never coloured', () => {
    expect(ran('check - --format json', { '-': TYPO }, { colours: true }).out).not.toContain('\u001B');
  });
});

describe('as text', () => {
  const out = (text: string, window = {}) => ran('check x.tappet', { 'x.tappet': text }, window).out;

  it('names the place, says what is odd and underlines it', () => {
    const [place, line, marks] = out(TYPO).split('\n');
    expect(place).toMatch(/^x\.tappet:2:11 error: .*9\.5.* \[comma-number\]$/);
    expect(line).toBe('      initial 9,5 deg');
    expect(marks).toBe('              ^^^');
  });

  it('offers the fix', () => expect(out(TYPO)).toMatch(/^ {4}fix: .*9\.5/m));

  it('names the line that belongs to it, and its day', () => {
    const text = dedent(`
      limits
        total <= 34 deg
      session 2026-05-02
        total 37 deg @ 3000 rpm, vacuum plugged
    `);
    expect(out(text)).toMatch(/^ {4}line 2: /m);
    const todo = dedent(`
      session 2026-05-02
        todo strainer: clean it out
      session 2026-05-03
        todo strainer: clean it out
    `);
    expect(out(todo)).toMatch(/^ {4}line 2, 2026-05-02: /m);
  });

  it.each<[string, string]>([
    ['', '1 notebook checked: nothing found by these checks.'],
    [TYPO, '1 notebook checked, 1 with findings: 1 error.'],
    [TYPO + TYPO.replace('05-02', '05-03'), '1 notebook checked, 1 with findings: 2 errors.'],
  ])('sums up %j', (text, summary) => expect(out(text).trimEnd().split('\n').at(-1)).toBe(summary));

  it('says the severity in words, whatever the colours', () => {
    const coloured = out(TYPO, { colours: true });
    expect(coloured).toContain('\u001B[31merror:\u001B[39m');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the colours are to go
    expect(coloured.replace(/\u001B\[\d+m/g, '')).toBe(out(TYPO));
  });
});

describe('a clear outcome for', () => {
  const outcome = (bytes: string | Uint8Array, format = 'text') =>
    ran(`check x.tappet --format ${format}`, { 'x.tappet': bytes });
  const findings = (bytes: string | Uint8Array) => JSON.parse(outcome(bytes, 'json').out).files[0].findings;

  it('an empty file', () => expect(outcome('').code).toBe(0));

  it('Windows line ends', () => {
    expect(outcome(TYPO.replaceAll('\n', '\r\n')).out).toBe(outcome(TYPO).out);
    expect(findings(TYPO.replaceAll('\n', '\r\n'))).toEqual(findings(TYPO));
  });

  it('a byte order mark', () => expect(findings(`\uFEFF${TYPO}`)).toEqual(findings(TYPO)));

  it('a NUL', () => {
    const { code, out } = outcome('session 2026-05-02\n  idle 8\u000020 rpm\n');
    expect(code).toBe(1);
    expect(out).toContain('8␀20');
    expect(out).not.toContain('\u0000');
  });

  it('an escape sequence', () => {
    const { code, out } = outcome('session 2026-05-02\n  idle \u001B[2J820 rpm\n');
    expect(code).toBe(1);
    expect(out).not.toContain('\u001B');
  });

  it('emoji and right-to-left text', () => {
    const [finding] = findings('session 2026-05-02\n  plug #1 "🔧 יבש"  9,5\n');
    expect(finding.range).toEqual({ start: { line: 1, character: 20 }, end: { line: 1, character: 23 } });
  });

  it('random bytes', () => {
    const bytes = Uint8Array.from({ length: 4096 }, (_, i) => (i * 197 + (i >> 3) * 89) % 256);
    expect(outcome(bytes)).toMatchObject({ code: 2, err: 'tappet: x.tappet: not UTF-8 text\n' });
  });

  it('one line of ten million characters', () => {
    const { code, out } = outcome(`note ${'x'.repeat(10_000_000)}`);
    expect(code).toBeLessThan(2);
    expect(out.length).toBeLessThan(2000);
  });
});
