/** References in few words, runs drawn together: 2, 3, 4, 5, 7 is `2 to 5, 7`. What is no number stands as printed. */
export function rangeWords(refs: string[]): string {
  const runs: { first: string; last: string }[] = [];
  for (const ref of refs) {
    const run = runs.at(-1);
    if (run && /^\d+$/.test(ref) && Number(ref) === Number(run.last) + 1) run.last = ref;
    else runs.push({ first: ref, last: ref });
  }
  return runs
    .map(({ first, last }) => {
      if (first === last) return first;
      return Number(last) === Number(first) + 1 ? `${first}, ${last}` : `${first} to ${last}`;
    })
    .join(', ');
}
