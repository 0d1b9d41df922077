/** A page for every rule, as Markdown, made from its row: to be read in the editor or the terminal, without a network. */
import type { Rule } from './rule.ts';

/** What the rule is, why it matters, how far it may be leaned on, both examples, and how it is silenced. */
export function pageOf(rule: Rule): string {
  return [
    `# ${rule.title}`,
    `\`${rule.code}\`, ${severityText(rule)}`,
    rule.why,
    `**How far it may be leaned on:** ${standing(rule)}.`,
    `## Found here\n\n${fenced(rule.bad)}`,
    `## Nothing found here\n\n${fenced(rule.good)}`,
    `## When the line is as it should be\n\n${silencing(rule)}`,
  ].join('\n\n');
}

const severityText = ({ severity }: Rule): string =>
  severity === 'error' ? 'an error: the line, or a part of it, cannot be read' : `told as ${severity}`;

function standing({ standing, source }: Rule): string {
  if (standing === 'notation') return 'it follows from how a notebook is written';
  if (standing === 'published') return `published, ${source ?? ''}`;
  const said = standing === 'from memory' ? 'from memory' : 'common practice';
  return source ? `${said} (${source})` : `${said}, no source`;
}

/** Long lines are cut: the page is read, not parsed. */
const fenced = (notebook: string): string =>
  `\`\`\`tappet\n${notebook
    .trimEnd()
    .split('\n')
    .map((line) => (line.length > 120 ? `${line.slice(0, 117)}...` : line))
    .join('\n')}\n\`\`\``;

const silencing = ({ code }: Rule): string =>
  `Write \`; meant: ${code}\` at the end of the line. Several codes are parted by commas. In the editor the setting \`tappet.severity\` makes the rule louder, quieter or silent in all notebooks.`;
