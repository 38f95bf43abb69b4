import type { Role } from '../people/role.ts';

/**
 * Who may ask: anyone; whoever is let in, a token too; a person who signed in; or, on the bench that the request is
 * about, a role and all that stand above it. `command-line`: whoever holds the key that the program announced.
 */
export type Right = 'anyone' | 'let-in' | 'person' | 'command-line' | Role;

/** What there is whether or not anybody signs in. Where nobody does, all of it is everybody's on this machine. */
const ofTheWork: Record<string, Right> = {
  'GET /api/health': 'anyone',
  'GET /api/ready': 'anyone',
  'GET /api/openapi.json': 'anyone',
  'GET /api/session': 'anyone',

  'GET /api/benches': 'let-in',
  'POST /api/benches': 'person',
  'POST /api/benches/:bench/open': 'person',
  'POST /api/read': 'let-in',

  'POST /api/keeping/backup': 'command-line',
  'POST /api/keeping/restore': 'command-line',

  'POST /api/measure': 'reader',
  'POST /api/fit': 'reader',
  'GET /api/find': 'reader',
  'GET /api/sizes': 'reader',
  'GET /api/sizes/:size': 'reader',
  'GET /api/sizes/:size/uses': 'reader',
  'GET /api/compare': 'reader',
  'GET /api/makers': 'reader',
  'GET /api/models': 'reader',
  'GET /api/models/:model': 'reader',
  'GET /api/models/:model/tools': 'reader',
  'GET /api/parts/:part': 'reader',
  'GET /api/parts/:part/interchange': 'reader',
  'GET /api/diagrams': 'reader',
  'GET /api/diagrams/:diagram': 'reader',
  'GET /api/diagrams/:diagram/progress': 'reader',
  'GET /api/diagrams/:diagram/rows': 'reader',
  'GET /api/diagrams/:diagram/file': 'reader',
  'GET /api/diagrams/:diagram/drawing': 'reader',
  'GET /api/diagrams/:diagram/pages/:page/picture': 'reader',
  'GET /api/diagrams/:diagram/columns': 'reader',
  'GET /api/jobs': 'reader',
  'GET /api/jobs/:job': 'reader',
  'GET /api/order': 'reader',

  'POST /api/jobs': 'counter',
  'PATCH /api/jobs/:job': 'counter',
  'POST /api/jobs/:job/needs': 'counter',
  'PATCH /api/needs/:need': 'counter',
  'DELETE /api/needs/:need': 'counter',

  'GET /api/order.csv': 'repairer',
  'GET /api/order.txt': 'repairer',
  'GET /api/order.xlsx': 'repairer',
  'PUT /api/models/:model/duty': 'repairer',
  'PUT /api/parts/:part/duty': 'repairer',
  'POST /api/diagrams': 'repairer',
  'POST /api/diagrams/text': 'repairer',
  'DELETE /api/diagrams/:diagram': 'repairer',
  'POST /api/diagrams/:diagram/restore': 'repairer',
  'PUT /api/diagrams/:diagram/columns': 'repairer',
  'POST /api/diagrams/:diagram/read-again': 'repairer',
  'POST /api/diagrams/:diagram/read-rest': 'repairer',
  'GET /api/diagrams/:diagram/written': 'reader',
  'POST /api/diagrams/:diagram/rows/:row/correction': 'repairer',
  'DELETE /api/diagrams/:diagram/rows/:row/correction': 'repairer',
  'POST /api/diagrams/:diagram/balloons': 'repairer',
  'PATCH /api/diagrams/:diagram/balloons/:balloon': 'repairer',
  'DELETE /api/diagrams/:diagram/balloons/:balloon': 'repairer',
  'DELETE /api/diagrams/:diagram/balloon-corrections/:correction': 'repairer',
};

/** What there is only where people sign in. */
export const ofAccounts: Record<string, Right> = {
  'POST /api/session': 'anyone',
  'DELETE /api/session': 'anyone',
  'POST /api/invitation': 'anyone',
  'POST /api/invitation/join': 'anyone',
  'POST /api/password/by-link': 'anyone',

  'PUT /api/password': 'person',
  'GET /api/sessions': 'person',
  'DELETE /api/sessions': 'person',
  'DELETE /api/sessions/:session': 'person',
  'POST /api/person/erase': 'person',

  'GET /api/people': 'owner',
  'POST /api/people': 'owner',
  'PATCH /api/people/:person': 'owner',
  'DELETE /api/people/:person': 'owner',
  'POST /api/people/:person/link': 'owner',
  'POST /api/people/:person/erase': 'owner',
  'GET /api/tokens': 'owner',
  'POST /api/tokens': 'owner',
  'DELETE /api/tokens/:token': 'owner',
  'GET /api/trail': 'owner',
  'GET /api/backup': 'owner',
  'POST /api/bench/erase': 'owner',
};

/** Every route and who may ask it. One that is not here lets nobody in. */
export const rights: Record<string, Right> = { ...ofTheWork, ...ofAccounts };
