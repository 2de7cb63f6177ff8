/** Prints the readings of a saved bike. */

/** `args` are the command's arguments; the result is the exit code. */
export function run(args: readonly string[]): number {
  if (args.length !== 1) {
    process.stderr.write('Usage: npm run readings -- FILE\n');
    return 2;
  }
  process.stdout.write(`${args[0]}\n`);
  return 0;
}
