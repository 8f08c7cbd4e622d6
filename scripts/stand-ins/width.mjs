// Stands in for the width of a text in columns, which only yargs' own help asks for; see columns.mjs.
export default function width(text) {
  return text.length;
}
