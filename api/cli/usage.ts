import type { ParseArgsOptionsConfig } from 'node:util';

export interface Command {
  /** What it does, in one line. */
  summary: string;
  /** Names of the positional arguments, all required. */
  arguments: string[];
  options: ParseArgsOptionsConfig;
  /** How the options are written, for the usage line. */
  synopsis?: string;
  /** Runs it; the answer is the exit code. */
  run(args: string[], options: Record<string, string | undefined>): Promise<number>;
}

/** The help text for these commands. */
export function usage(commands: Record<string, Command>): string {
  const lines = Object.entries(commands).map(([name, command]) => {
    const call = ['fettle', name, ...command.arguments.map(word => word.toUpperCase()), command.synopsis]
      .filter(Boolean)
      .join(' ');
    return `  ${call}\n      ${command.summary}`;
  });
  return `usage:\n${lines.join('\n')}\n`;
}

/** Says on standard error what was called wrongly; exit code 2. */
export function complain(what: string, help: string): number {
  process.stderr.write(`fettle: ${what}\n${help}`);
  return 2;
}
