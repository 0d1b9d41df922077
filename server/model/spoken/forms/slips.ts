/** Slips of the pencil in words of danger, which must not be missed. Common practice, no source. */

const SPELLINGS: readonly (readonly [wrong: RegExp, right: string])[] = [
  [/\bleek/gi, 'leak'],
  [/\b(?:trottle|throtle|throttel|thottle|throttl)\b/gi, 'throttle'],
  [/\b(?:steerin['’]?|stearing|stering)(?![a-z])/gi, 'steering'],
  [/\bsmel(?=s?\b)/gi, 'smell'],
  [/\bfrayd\b/gi, 'frayed'],
  [
    /\b(?:breaks?|brakse?|braks)(?= (?:are|is|pull|soft|spong|fad|fail|gone|weak|bad|grab|lock|don|won|do not))/gi,
    'brakes',
  ],
  [/\b(?:pertol|petrole|petral|petorl)\b/gi, 'petrol'],
  [/\b(?:fule|feul|fual)\b/gi, 'fuel'],
  [/\b(?:tyer|tier|tyre|tires)(?= )/gi, 'tyre'],
  [/\b(?:exaust|exhuast|exhast)\b/gi, 'exhaust'],
  [/\b(?:batery|battry|batterie)\b/gi, 'battery'],
  [/\b(?:loos|losse)\b/gi, 'loose'],
];

/** The text with those words as they are spelt. */
export const withoutSlips = (text: string): string =>
  SPELLINGS.reduce((words, [wrong, right]) => words.replace(wrong, right), text);
