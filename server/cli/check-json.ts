/**
 * Findings as JSON: `{"files":[{"path", "findings":[{"code","severity","message","range":{"start","end"}}]}]}`, one
 * finding a line. Lines and characters count from zero, characters in UTF-16 units, as in the protocol.
 */
import type { LocatedFinding } from '../model/snapshot/finding.ts';
import type { Terminal } from './terminal.ts';
import type { Writer } from './writer.ts';

/** One JSON object for all files; lines and characters from zero. */
export function jsonFindings({ write }: Terminal): Writer {
  let files = 0;
  write('{"files":[');
  return {
    file: ({ path, findings }) => {
      write(`${files++ > 0 ? ',' : ''}\n{"path":${JSON.stringify(path)},"findings":[`);
      let count = 0;
      for (const finding of findings) write(`${count++ > 0 ? ',' : ''}\n${JSON.stringify(jsonOf(finding))}`);
      write(count > 0 ? '\n]}' : ']}');
    },
    end: () => write('\n]}\n'),
  };
}

function jsonOf({ code, severity, message, at, span }: LocatedFinding) {
  const range = { start: { line: at, character: span.from }, end: { line: at, character: span.to } };
  return { code, severity, message, range };
}
