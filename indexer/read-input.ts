const newline = 10;

/** What stands on standard input: a line of JSON, then a document's bytes. */
export async function readInput<Request>(): Promise<{ request: Request; bytes: Uint8Array }> {
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
  const input = Buffer.concat(chunks);
  const end = input.indexOf(newline);
  return {
    request: JSON.parse(input.toString('utf8', 0, end)) as Request,
    bytes: input.subarray(end + 1),
  };
}
