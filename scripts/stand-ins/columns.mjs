// Stands in for the column layout of yargs' own help, which is never printed: ours is. The real one loads word
// breaking for every script of the world, which takes as long as Node itself takes to start.
export default function columns() {
  throw new Error("the help of yargs is not printed");
}
