/** How somebody who builds fills in the parameters of a family. */
export interface Guide<Key extends string = string> {
  /** What is measured or chosen for each part, in the order in which one would do so. */
  readonly first: readonly Key[];
  /** How a quantity is measured: from which face to which, with what. Bought items are told by their table. */
  readonly measure: Readonly<Partial<Record<Key, string>>>;
}
