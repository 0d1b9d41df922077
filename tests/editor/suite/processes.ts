/** The processes that the extension host started. Not for a web worker. */
import { execFileSync } from 'node:child_process';

/** The ids of this process's children whose command line has `name` in it. */
export function children(name: string): readonly string[] {
  const table = execFileSync('ps', ['-A', '-o', 'pid=,ppid=,args='], { encoding: 'utf8' });
  const rows = table.split('\n').map((row) => row.trim().split(/\s+/));
  const ours = rows.filter(
    ([, parent, ...args]) => parent === String(process.pid) && args.join(' ').includes(name),
  );
  return ours.map(([pid]) => String(pid));
}
