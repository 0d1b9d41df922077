/** The tables of the notation's specification, made from the tables of the trade. */

import { UNITS, type Unit, unitById } from '../../server/trade/measure/units.ts';
import { ROAD_CHECKS } from '../../server/trade/practice/road-checks.ts';
import type { Quantity } from '../../server/trade/vocabulary/quantity.ts';
import { PLACE_WORDS, VOCABULARY } from '../../server/trade/vocabulary/vocabulary.ts';

const REGIONS: Readonly<Record<string, () => string>> = {
  units,
  places,
  settings: () => words(({ kind }) => kind === 'setting', 'Part'),
  readings: () => words(({ kind }) => kind === 'reading'),
  'engine facts': () => words(({ section }) => section === 'engine'),
  'vehicle facts': () => words(({ section }) => section === 'vehicle'),
  'road checks': roadChecks,
};

/** The specification with its tables anew. A table that has no place in it throws: nobody would notice it missing. */
export function notation(old: string): string {
  return Object.entries(REGIONS).reduce((text, [name, table]) => {
    const region = new RegExp(`(<!-- table: ${name} -->\n)[\\s\\S]*?(<!-- end of table -->)`);
    if (!region.test(text)) throw new Error(`the specification has no place for the table of ${name}`);
    return text.replace(region, (_, head: string, end: string) => `${head}\n${table()}\n\n${end}`);
  }, old);
}

function units(): string {
  const dimensions = [...new Set(UNITS.map(({ dimension }) => dimension))];
  return table(
    ['Of', 'Units, each with what may be written for it'],
    dimensions.map((dimension) => [
      dimension,
      UNITS.filter((unit) => unit.dimension === dimension)
        .map(unitText)
        .join('; '),
    ]),
  );
}

function unitText({ symbol, spellings }: Unit): string {
  const known = [symbol.toLowerCase(), ...spellings];
  const others = spellings.filter(
    (spelling) =>
      spelling !== symbol.toLowerCase() && !isSameDegree(spelling) && !isRunTogether(spelling, known),
  );
  const own = symbol === '' ? 'a bare number' : code(symbol);
  return others.length > 0 ? `${own} (${others.map(code).join(', ')})` : own;
}

/** `degs`, `degree`, `degrees` and `°` may stand wherever `deg` may; said once, above the table. */
const isSameDegree = (spelling: string): boolean => /\b(?:degs|degrees?)\b|.°|°./.test(spelling);

/** So may `lbft` for `lb-ft`. */
const isRunTogether = (spelling: string, known: readonly string[]): boolean =>
  known.some((other) => other !== spelling && other.replace(/[ ·-]/g, '') === spelling);

function places(): string {
  const kinds = [...new Set(PLACE_WORDS.values())];
  return table(
    ['Kind of place', 'Written'],
    kinds.map((kind) => [
      kind,
      [...PLACE_WORDS]
        .filter(([, each]) => each === kind)
        .map(([word]) => code(word))
        .join(', '),
    ]),
  );
}

function words(which: (row: Quantity) => boolean, owner?: string): string {
  const rows = VOCABULARY.filter(which);
  const own = (row: Quantity): readonly string[] => (owner ? [row.owner ?? ''] : []);
  return table(
    ['Word', 'Also', 'Takes', ...(owner ? [owner] : []), 'Meaning'],
    rows.map((row) => [
      code(row.name),
      row.aliases.map(code).join(', '),
      takes(row),
      ...own(row),
      row.meaning,
    ]),
  );
}

function takes({ form, unit, against, orIn, bare, words, places, parts }: Quantity): string {
  const symbol = unit === undefined ? '' : unitById(unit).symbol || 'a number';
  const value = {
    number: `${symbol}${bare && symbol !== 'a number' ? ', unit may be left out' : ''}`,
    curve: `${symbol} @ ${against ? unitById(against.unit).symbol : ''}`,
    text: 'words or "text"',
    several: [...new Set(parts?.map(({ name }) => name))].join(', '),
    order: 'cylinders joined by hyphens',
  }[form];
  const more = [
    orIn && `or in ${orIn.join(', ')}`,
    words?.map(code).join(', '),
    places && `by ${places.join(', ')}`,
  ];
  return [value, ...more].filter(Boolean).join('; ');
}

function roadChecks(): string {
  return table(
    ['Check', 'Due after work on', 'Because'],
    ROAD_CHECKS.map(({ name, owners, why }) => [
      code(name),
      [...owners.map((owner) => `anything of the ${owner}`), ...settingsOf(name).map(code)].join(', '),
      why,
    ]),
  );
}

const settingsOf = (check: string): readonly string[] =>
  VOCABULARY.filter(({ traits }) => traits?.roadCheck === check).map(({ name }) => name);

const code = (text: string): string => `\`${text}\``;

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}
