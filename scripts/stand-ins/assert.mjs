// Stands in for Node's own assertions, of which the reader of arguments needs two: the real ones are loaded with all
// that it takes to compare and to print anything.
export function strictEqual(one, other, message) {
  if (!Object.is(one, other)) throw fault(message);
}

export function notStrictEqual(one, other, message) {
  if (Object.is(one, other)) throw fault(message);
}

const fault = (message) => (message instanceof Error ? message : new Error(message));
