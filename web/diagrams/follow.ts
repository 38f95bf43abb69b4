import type { Progress } from '../../api/answers/index.ts';
import { follow as open } from '../api.ts';

/**
 * How far the reading of a diagram has come, as the service tells it, until it is ready or refused. Read from a fetch,
 * since an EventSource cannot say which bench it asks for.
 */
export async function* progressOf(diagram: string, signal: AbortSignal): AsyncGenerator<Progress> {
  const reader = (await open(diagram, signal)).getReader();
  const decoder = new TextDecoder();
  let waiting = '';
  for (;;) {
    const { value, done } = await reader.read();
    if (done) return;
    waiting += decoder.decode(value, { stream: true }).replaceAll('\r\n', '\n');
    const events = waiting.split('\n\n');
    waiting = events.pop() ?? '';
    for (const event of events) {
      const data = event
        .split('\n')
        .filter(line => line.startsWith('data:'))
        .map(line => line.slice(5).trimStart())
        .join('\n');
      if (data) yield JSON.parse(data) as Progress;
    }
  }
}
