import { randomInt, randomUUID } from 'node:crypto';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Diagram, DiagramRow } from './answers.ts';
import type { Program } from './program.ts';

/** What was acknowledged: documents by their name, corrections by document and line. */
export interface Acknowledged {
  diagrams: Map<string, { id: string; lines: string[] }>;
  /** `<diagram>/<part number>` to the quantity that a person said. */
  corrections: Map<string, number>;
  /** Requests that had to be sent again because something was killed. */
  repeated: number;
}

const descriptions = [
  'BALL BEARING 5X11X4 ZZ',
  'SCREW PAN HEAD M3X8',
  'SHIM 8X11X0.1',
  'E-RING 4',
  'DRAG KNOB',
];

/** A bench's day: documents come in and readings are corrected, each request sent again until it is acknowledged. */
export class Work {
  readonly done: Acknowledged = { diagrams: new Map(), corrections: new Map(), repeated: 0 };
  ending = false;
  #documents = 0;

  readonly program: Program;
  readonly bench: string;

  constructor(program: Program, bench: string) {
    this.program = program;
    this.bench = bench;
  }

  async importing(): Promise<void> {
    while (!this.ending) {
      const number = ++this.#documents;
      const name = `list-${number}.csv`;
      const lines = Array.from({ length: randomInt(5, 60) }, (_, i) => `${number}-${1000 + i}`);
      const text = lines.map(
        (part, i) => `${i + 1},${part},${descriptions[i % descriptions.length]},${(i % 4) + 1}`,
      );
      const form = () => {
        const body = new FormData();
        body.set(
          'file',
          new File([`Ref,Part No,Description,Qty\n${text.join('\n')}\n`], name, { type: 'text/csv' }),
        );
        body.set('maker', 'Brindlow');
        body.set('model', `Reel ${number}`);
        return body;
      };
      const { diagram } = (await this.post('/api/diagrams', form)) as { diagram: Diagram };
      this.done.diagrams.set(name, { id: diagram.id, lines });
      // Not faster than they are read, or corrections find nothing.
      for (let tries = 0; tries < 40 && !this.ending && !(await this.readyRows(diagram.id)); tries++)
        await sleep(50);
    }
  }

  async correcting(): Promise<void> {
    while (!this.ending) {
      const all = [...this.done.diagrams.values()];
      const one = all[randomInt(Math.max(1, all.length))];
      const rows = one && (await this.readyRows(one.id));
      if (!rows?.length) {
        await sleep(20);
        continue;
      }
      const row = rows[randomInt(rows.length)]!;
      const qty = randomInt(1, 1_000_000);
      const correction = { category: 'plain', dims: {}, attrs: {}, qty };
      const path = `/api/diagrams/${one!.id}/rows/${row.id}/correction`;
      // Null: read again meanwhile, so that the row has another id.
      if (await this.post(path, () => JSON.stringify(correction)))
        this.done.corrections.set(`${one!.id}/${row.partNumber}`, qty);
      if (randomInt(8) === 0) await this.post(`/api/diagrams/${one!.id}/read-again`, () => undefined);
    }
  }

  /** The taken rows of a document that is read; null while it is not. */
  async readyRows(diagram: string): Promise<DiagramRow[] | null> {
    try {
      const answer = await fetch(`${this.program.address}/api/diagrams/${diagram}/rows?limit=2000`, {
        headers: { Workshop: this.bench },
      });
      const page = (await answer.json()) as { diagram: Diagram; rows: DiagramRow[] };
      // Given up because its reader was killed again and again: a person would let it be read again.
      if (answer.ok && page.diagram.state === 'refused')
        await this.post(`/api/diagrams/${diagram}/read-again`, () => undefined);
      return answer.ok && page.diagram.state === 'ready'
        ? page.rows.filter(row => row.outcome === 'taken')
        : null;
    } catch {
      return null;
    }
  }

  /** Sends until it is acknowledged, always under the same key; null where what it is about is gone. */
  async post(path: string, body: () => FormData | string | undefined): Promise<unknown> {
    const key = randomUUID();
    for (;;) {
      try {
        const content = body();
        const headers: Record<string, string> = { Workshop: this.bench, 'Idempotency-Key': key };
        if (typeof content === 'string') headers['Content-Type'] = 'application/json';
        const answer = await fetch(this.program.address + path, {
          method: 'POST',
          headers,
          body: content ?? null,
        });
        const said = await answer.json();
        if (answer.ok) return said;
        if (answer.status === 404 || answer.status === 409) return null;
        if (answer.status < 500) throw new Unexpected(`${path}: ${JSON.stringify(said)}`);
      } catch (error) {
        if (error instanceof Unexpected) throw error;
      }
      this.done.repeated++;
      await sleep(30);
    }
  }
}

class Unexpected extends Error {}
