/** The page of a rule as Markdown, made from its row and read in the editor or the terminal, without a network. */
import type { Severity } from '../model/snapshot/finding.ts';
import type { Rule } from './rule.ts';

/** What the rule is, why it matters, how reliable it is, both examples, and how to silence it. */
export function pageOf(rule: Rule): string {
  return [
    `# ${rule.title}`,
    `\`${rule.code}\`, ${severityText(rule)}`,
    rule.why,
    `**How reliable it is:** ${standingText(rule)}.`,
    `## Reported here\n\n${codeBlock(rule.bad)}`,
    `## Not reported here\n\n${codeBlock(rule.good)}`,
    `## When the line is right as it is\n\n${silencingText(rule)}`,
  ].join('\n\n');
}

const severityText = ({ severity }: Rule): string => REPORTED_AS[severity];

const REPORTED_AS: Readonly<Record<Severity, string>> = {
  error: 'an error: all or part of the line cannot be read',
  warning: 'reported as a warning',
  information: 'reported as information',
  hint: 'reported as a hint',
};

function standingText({ standing, source }: Rule): string {
  if (standing === 'notation') return 'it follows from the notation';
  if (standing === 'published') return `published, ${source ?? ''}`;
  const basis = standing === 'from memory' ? 'from memory' : 'common practice';
  return source ? `${basis} (${source})` : `${basis}, no source`;
}

/** Long lines are cut: the page is read, not parsed. */
const codeBlock = (notebook: string): string =>
  `\`\`\`tappet\n${notebook
    .trimEnd()
    .split('\n')
    .map((line) => (line.length > 120 ? `${line.slice(0, 117)}...` : line))
    .join('\n')}\n\`\`\``;

const silencingText = ({ code }: Rule): string =>
  `Write \`; meant: ${code}\` at the end of the line; separate several codes with commas. In the editor, the setting \`tappet.severity\` changes the severity of the rule in all notebooks, or turns it off.`;
