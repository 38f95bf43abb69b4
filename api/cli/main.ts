import { parseArgs } from 'node:util';
import { commands } from './commands.ts';
import { complain, usage } from './usage.ts';

/**
 * The command line. Nothing but the answer goes to standard output; what went wrong goes to standard error with its
 * remedy. Exit codes: 0 done, 1 refused or partly faulted, 2 called wrongly.
 */
async function main(args: string[]): Promise<number> {
  // A command is one word or two.
  const words = commands[args.slice(0, 2).join(' ')] ? 2 : 1;
  const name = args.length > 0 ? args.slice(0, words).join(' ') : undefined;
  const rest = args.slice(words);
  if (name === undefined || name === 'help' || name === '--help') {
    process.stdout.write(usage(commands));
    return name === undefined ? 2 : 0;
  }
  const command = commands[name];
  if (!command) return complain(`there is no command "${name}"`, usage(commands));
  let parsed: ReturnType<typeof parseArgs>;
  try {
    parsed = parseArgs({ args: rest, options: command.options, allowPositionals: true, strict: true });
  } catch (error) {
    return complain((error as Error).message, usage({ [name]: command }));
  }
  if (parsed.positionals.length !== command.arguments.length)
    return complain(
      `"${name}" takes ${command.arguments.length || 'no'} argument(s)`,
      usage({ [name]: command }),
    );
  return command.run(parsed.positionals, parsed.values as Record<string, string | undefined>);
}

process.exitCode = await main(process.argv.slice(2));
