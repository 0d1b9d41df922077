/** Numbers as they are pencilled, to numbers as the notation writes them. A number that may be two is given as both. */

const EIGHTHS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    '½': '1/2',
    '¼': '1/4',
    '¾': '3/4',
    '⅛': '1/8',
    '⅜': '3/8',
    '⅝': '5/8',
    '⅞': '7/8',
    '⅓': '1/3',
    '⅔': '2/3',
  }),
);

export const FRACTION_SIGNS = [...EIGHTHS.keys()].join('');

/** `42,310` is forty-two thousand or forty-two and a bit; `0,45` only the latter. Empty for what is no number. */
export function readingsOfNumber(raw: string): readonly string[] {
  if (raw.includes('\u2009')) return [raw.replace('\u2009', '')];
  const sign = EIGHTHS.get(raw.slice(-1));
  if (sign) return [`${raw.slice(0, -1).trim()} ${sign}`.trim()];
  const lap = /^(\d+):(\d\d)[.,](\d+)$/.exec(raw);
  if (lap) return [String(Number((Number(lap[1]) * 60 + Number(`${lap[2]}.${lap[3]}`)).toFixed(3)))];
  const mixed = /^(\d+)\D+(\d+\/\d+)$/.exec(raw);
  if (mixed) return [`${mixed[1]} ${mixed[2]}`];
  if (raw.includes('/')) return [raw];
  const parts = raw.split(/[.,]/);
  if (parts.length === 1) return [raw];
  if (parts.length > 2) return parts.slice(1).every((part) => part.length === 3) ? [parts.join('')] : [];
  const [whole, rest] = parts as [string, string];
  const decimal = `${whole}.${rest}`;
  const isGroup = rest.length === 3 && /^[1-9]\d{0,2}$/.test(whole);
  return isGroup ? [decimal, whole + rest] : [decimal];
}

/** The size of a number as the notation writes it. */
export function sizeOf(text: string): number {
  const mixed = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(text);
  return mixed ? Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]) : Number(text);
}
