/** Things by what they have in common, each group in the order given. */
export function grouped<Thing>(
  things: readonly Thing[],
  key: (thing: Thing) => string,
): Map<string, Thing[]> {
  const groups = new Map<string, Thing[]>();
  for (const thing of things) {
    const group = groups.get(key(thing));
    if (group) group.push(thing);
    else groups.set(key(thing), [thing]);
  }
  return groups;
}
