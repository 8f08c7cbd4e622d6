/** Returns the work done at most once for each thing, as long as the thing is there: equal objects, the same answer. */
export function onceForEach<Thing extends object, Answer>(work: (thing: Thing) => Answer): (thing: Thing) => Answer {
  const known = new WeakMap<Thing, { readonly answer: Answer }>();
  return (thing) => {
    const before = known.get(thing);
    if (before !== undefined) return before.answer;
    const answer = work(thing);
    known.set(thing, { answer });
    return answer;
  };
}
