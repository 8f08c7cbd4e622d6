/** One thing explained: in words, and as data for `--json`. */
export interface Page {
  /** What the user may type to see this page alone: `screw-foot.seat`. */
  readonly name: string;
  /** The first line. */
  readonly title: string;
  readonly lines: readonly string[];
  readonly data: object;
}
