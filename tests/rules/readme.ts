/** What a newcomer must read first in README.md. */

/** Every way in which the text falls short; empty when it does not. */
export function readmeFaults(markdown: string): string[] {
  const faults: string[] = [];
  const [title, first] = markdown.split(/\n\s*\n/);
  if (!/^# \S[^\n]*$/.test(title ?? '')) faults.push('does not begin with its title');
  if (!/^\p{L}/u.test(first ?? '')) faults.push('what follows the title is not a paragraph');
  for (const command of ['npm start', 'npm test'])
    if (!markdown.includes(command)) faults.push(`does not name the command ${command}`);
  return faults;
}
