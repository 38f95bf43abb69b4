import { createInterface } from 'node:readline';
import type { ReadStream } from 'node:tty';
import { newPassword } from '../people/sign-in-name.ts';
import { refuse } from '../refusal.ts';

/**
 * A new password: asked for twice at a terminal, without showing it, else the first line of the input. Never an
 * argument, which others on the machine could see. Refused where it is too short, or the two differ.
 */
export async function readNewPassword(input: NodeJS.ReadStream = process.stdin): Promise<string> {
  const given = input.isTTY ? await askTwice(input) : await firstLine(input);
  const checked = newPassword.safeParse(given);
  if (checked.success) return checked.data;
  throw wrong(`${checked.error.issues[0]!.message}.`, 'Choose a longer one: three or four words do well.');
}

const wrong = (message: string, remedy: string) =>
  refuse('bad-request', { place: 'password', message, remedy });

async function askTwice(input: ReadStream): Promise<string> {
  const first = await ask(input, 'New password: ');
  if ((await ask(input, 'Once more: ')) === first) return first;
  throw wrong('The two are not the same.', 'Try again.');
}

function ask(input: ReadStream, words: string): Promise<string> {
  process.stderr.write(words);
  input.setRawMode(true).setEncoding('utf8').resume();
  return new Promise((resolve, reject) => {
    let typed = '';
    const end = (settle: () => void) => {
      input.off('data', hear).setRawMode(false).pause();
      process.stderr.write('\n');
      settle();
    };
    const hear = (text: string) => {
      for (const character of text) {
        if (character === '\r' || character === '\n') return end(() => resolve(typed));
        // Ctrl-C and Ctrl-D, which the terminal no longer minds.
        if (character === '\u0003' || character === '\u0004')
          return end(() => reject(wrong('It was broken off.', 'Nothing was changed.')));
        typed = character === '\u007f' || character === '\b' ? typed.slice(0, -1) : typed + character;
      }
    };
    input.on('data', hear);
  });
}

async function firstLine(input: NodeJS.ReadStream): Promise<string> {
  for await (const line of createInterface({ input })) return line;
  return '';
}
