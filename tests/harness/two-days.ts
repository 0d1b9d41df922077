/** Two sessions, for what a change between them did. */

/** Two sessions with an idle each; the lines of the second stand before its idle. */
export const twoDays = (first: string, second: string, idle = '860 rpm'): string => `
  session 2026-05-02
${indented(first)}
    idle 820 rpm in neutral
  session 2026-05-03
${indented(second)}
    idle ${idle} in neutral`;

const indented = (lines: string): string =>
  lines
    .split(' | ')
    .map((line) => `    ${line}`)
    .join('\n');
