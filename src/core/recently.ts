/**
 * Returns a memory of answers: what was asked for by the same key a while ago is handed out again, as the same object.
 * It holds at most `most` answers; the one that was asked for longest ago goes first.
 */
export function recently<Answer>(most: number): (key: string, work: () => Answer) => Answer {
  const kept = new Map<string, Answer>();
  return (key, work) => {
    const known = kept.get(key);
    const answer = known ?? work();
    if (known !== undefined) kept.delete(key);
    kept.set(key, answer);
    for (const [oldest] of kept) {
      if (kept.size <= most) break;
      kept.delete(oldest);
    }
    return answer;
  };
}
