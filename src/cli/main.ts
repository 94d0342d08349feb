/** Runs one command line and returns the process's exit code: 2 for anything that can't be understood. */
export async function main(args: readonly string[]): Promise<number> {
  const [command] = args;
  const reason = command === undefined ? '' : `rackway: unknown command '${command}'\n`;
  process.stderr.write(`${reason}usage: rackway COMMAND [ARGUMENT...]\n`);
  return 2;
}
