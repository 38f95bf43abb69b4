import type { Role, Trail } from '../../api/answers/index.ts';
import { roleWords } from './role-words.ts';

type Entry = Trail['entries'][number];

const erased = 'somebody whose name was erased';
const capital = (words: string) => words[0]!.toUpperCase() + words.slice(1);

/** Who did it. */
export function doerWords({ by, byToken }: Entry): string {
  if (by) return by.name ?? capital(erased);
  if (byToken) return `Token “${byToken.name ?? ''}”`;
  return 'Whoever runs the server';
}

const roleOf = (role: string | null) => roleWords[role as Role]?.name.toLowerCase() ?? role ?? '';

/** What was done, after who did it. */
export function deedWords({ deed, by, of, ofToken, from, to, kind }: Entry): string {
  const whom = of && of.id === by?.id ? 'themselves' : (of?.name ?? erased);
  const token = `the token “${ofToken?.name ?? ''}”`;
  switch (deed) {
    case 'bench-started':
      return 'started the bench.';
    case 'signed-in':
      return 'signed in.';
    case 'password-changed':
      return 'set a new password.';
    case 'invited':
      return `invited ${whom} as ${roleOf(to)}.`;
    case 'link-made':
      return `made a new link for ${whom}.`;
    case 'joined':
      return 'came in by a link.';
    case 'role-changed':
      return `made ${whom} ${roleOf(to)}, before ${roleOf(from)}.`;
    case 'renamed':
      return `gave ${whom} another name.`;
    case 'left':
      return `ended the work of ${whom} here.`;
    case 'name-erased':
      return 'erased a name.';
    case 'token-made':
      return `made ${token}, to ${kind === 'write' ? 'read and write' : 'read'}.`;
    case 'token-revoked':
      return `revoked ${token}.`;
    case 'order-taken-out':
      return `took the order out as ${kind}.`;
    case 'document-taken-out':
      return 'took a document out.';
    case 'bench-taken-out':
      return 'took a backup of the bench out.';
  }
}
