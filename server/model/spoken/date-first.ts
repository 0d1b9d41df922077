/** Heads that do not begin with their date, put so that they do: `Boat - Apr 11`, `Sat night, 14th`, `le 14 mars`. By the text alone. */

const WEEKDAY = String.raw`(?:mon|tue|wed|thu|fri|sat|sun|mo|di|mi|do|fr|sa|so|lun|mar|mer|jeu|ven|sam|dim|lör|sön|zat|zon)\p{L}{0,6}\.?`;
const MONTH = String.raw`(?:jan|jän|feb|fev|fév|mar|mär|mrz|mrt|maart|apr|avr|may|mai|maj|mei|jun|juin|jul|juil|aug|août|aout|sep|oct|okt|nov|dec|dez|déc)\p{L}{0,7}\.?`;
const NUMBERED = String.raw`\d{1,2}[./-]\d{1,2}(?:[./-](?:\d{4}|\d{2}))?\.?`;
const MONTHED = String.raw`(?:\d{1,2}(?:st|nd|rd|th|er|\.)? (?:of )?${MONTH}|${MONTH} \d{1,2}(?:st|nd|rd|th)?)(?:,? '?(?:\d{4}|\d{2}))?`;
const DATE = String.raw`(?:${WEEKDAY},? )?(?:${MONTHED}|${NUMBERED})`;
const PART =
  '(?:early |late )?(?:night|morning|eve|evening|arvo|afternoon|noon|lunchtime|teatime|early|late)';
const THING =
  '(?:the )?(?:truck|boat|car|bike|tractor|saloon|six|engine|van|pickup|launch|mower|motor|road|lake|track|garage|shed|dyno|rollers)';
const pattern = (source: string): RegExp => new RegExp(source, 'iu');

const ORDERS: readonly (readonly [said: RegExp, first: string])[] = [
  [pattern(String.raw`^(?:le|den|am|the|om|på|op|${PART} of)(?: the)? (?=\d)`), ''],
  [pattern(String.raw`^(\d{1,2})-(\p{L}{3,9})-(?=\d{2})`), '$1 $2 '],
  [/^1er (?=\p{L})/iu, '1 '],
  [pattern(String.raw`^(${WEEKDAY}) ${PART},? (?=\d|the |${MONTH})`), '$1 '],
  [pattern(String.raw`^\((${DATE})\)$`), '$1'],
  [pattern(String.raw`^(?:bank hol(?:iday)?|easter|whit(?:sun)?|half term),? (?=${WEEKDAY},? \d)`), ''],
  [pattern(String.raw`^(${THING}) (${DATE})$`), '$2 $1'],
  [pattern(String.raw`^(${THING})(?:,| -| –|:) ?(${DATE})$`), '$2 $1'],
  [pattern(String.raw`^([\p{L} ]{3,20}?)(?:,| -| –|:) ?((?:${WEEKDAY},? )?(?:${MONTHED}))$`), '$2 $1'],
];

/** The head with its date first; the line itself where it is no such head. */
export const dateFirst = (line: string): string =>
  ORDERS.reduce((text, [said, first]) => text.replace(said, first), line.trim());
