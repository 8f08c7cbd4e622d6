/**
 * Returns in words which rings come out of a stack over the bearing and which go in, each by inside x outside x
 * thickness in mm: "a ring 8 x 12 x 1.0 out from over the bearing"; "" where they are the same.
 */
export function ringWords(before: readonly string[], after: readonly string[]): string {
  const surplus = (of: readonly string[], over: readonly string[]) =>
    [...new Set(of)].flatMap((name) => {
      const many = of.filter((one) => one === name).length - over.filter((one) => one === name).length;
      return many <= 0 ? [] : [many === 1 ? `a ring ${name}` : `${many} rings ${name}`];
    });
  const out = surplus(before, after);
  const into = surplus(after, before);
  return [
    ...(out.length === 0 ? [] : [`${out.join(" and ")} comes out from over the bearing`]),
    ...(into.length === 0 ? [] : [`${into.join(" and ")} more over the bearing`]),
  ].join(", ");
}
