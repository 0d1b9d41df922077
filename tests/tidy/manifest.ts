/** The sections of the extension's manifest and of its editing rules that are made from tables. */
import { FIRST_WORDS } from '../../grammar/index.ts';
import { MEANINGS, type Meaning } from '../../server/features/semantic-tokens.ts';
import { selectorOf } from '../../server/lsp/semantic.ts';
import { RULES } from '../../server/rules/check.ts';
import { type Dimension, UNITS } from '../../server/trade/measure/units.ts';

const SEVERITIES = ['error', 'warning', 'information', 'hint', 'off'];
const AS_WRITTEN = 'as written';

/** What a unit can be chosen for, and the dimension of that unit. */
const PREFERRED: Readonly<Record<string, Dimension>> = {
  temperature: 'temperature',
  pressure: 'pressure',
  depression: 'pressure',
  length: 'length',
  torque: 'torque',
  roadSpeed: 'road speed',
  distance: 'distance',
};

/** The manifest with a severity setting for each rule and a unit setting for each preference. */
export function manifest(old: string): string {
  const read = JSON.parse(old);
  const properties = read.contributes.configuration.properties;
  properties['tappet.severity'] = severitySetting();
  properties['tappet.units'] = unitSetting();
  read.contributes.semanticTokenScopes = [{ language: 'tappet', scopes: meaningScopes() }];
  read.contributes.configuration.properties = Object.fromEntries(Object.entries(properties).sort());
  return `${JSON.stringify(read, null, 2)}\n`;
}

/** The scopes that the grammar gives the same words, so that no word changes colour when its meaning is known. */
const SCOPES: Readonly<Record<Meaning, string>> = {
  keyword: 'keyword.control',
  setting: 'variable.parameter',
  reading: 'entity.name.function',
  fact: 'variable.parameter',
  value: 'constant.numeric',
  unit: 'keyword.other.unit',
  text: 'string.quoted.double',
  place: 'constant.language',
  condition: 'constant.language',
  id: 'entity.name.type',
  note: 'markup.italic',
  title: 'markup.heading',
};

const meaningScopes = () =>
  Object.fromEntries(MEANINGS.map((meaning) => [selectorOf(meaning), [`${SCOPES[meaning]}.tappet`]]));

/** The editing rules, with the words after which an editor indents. */
export function languageConfiguration(old: string): string {
  const indented = wordsOf('Section', 'Session');
  const rules = {
    increaseIndentPattern: { pattern: `^(${indented})\\b|^\\s+${wordsOf('Trial')}\\b`, flags: 'i' },
    decreaseIndentPattern: { pattern: `^\\s+${wordsOf('Session')}\\s+\\d`, flags: 'i' },
  };
  return `${JSON.stringify({ ...JSON.parse(old), indentationRules: rules }, null, 2)}\n`;
}

function severitySetting() {
  const rules = RULES.map(({ code, title, severity }) => [
    code,
    { type: 'string', enum: SEVERITIES, default: severity, description: `${title}.` },
  ]);
  return {
    type: 'object',
    scope: 'resource',
    description: 'Severity of each rule by its code; "off" disables the rule.',
    additionalProperties: false,
    properties: Object.fromEntries(rules),
    default: {},
  };
}

function unitSetting() {
  const choices = Object.entries(PREFERRED).map(([name, dimension]) => {
    const symbols = UNITS.filter((unit) => unit.dimension === dimension).map(({ symbol }) => symbol);
    return [name, { type: 'string', enum: [AS_WRITTEN, ...symbols], default: AS_WRITTEN }];
  });
  return {
    type: 'object',
    scope: 'resource',
    description: 'Units in which values are shown. The notebook itself is never changed.',
    additionalProperties: false,
    properties: Object.fromEntries(choices),
    default: {},
  };
}

function wordsOf(...kinds: readonly string[]): string {
  const words = Object.entries(FIRST_WORDS).filter(([, kind]) => kinds.includes(kind));
  return words.map(([word]) => word).join('|');
}
