/** Where in a file something stands; lines and columns count from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
  /** How many letters are meant, for the marks below the line. */
  readonly width: number;
  /** The whole line. */
  readonly text: string;
}
