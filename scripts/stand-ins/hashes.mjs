// Stands in for hashes in plain JavaScript, which also run where there is no Node: here Node's own are at hand, and as
// good as free.
import { createHash } from "node:crypto";

export const sha256 = (bytes) => createHash("sha256").update(bytes).digest();
