import { createHash } from "node:crypto";

/** Returns the SHA-256 of bytes or of a text in hex digits: Node's own, ten times faster than one in JavaScript. */
export const sha256 = (data: Uint8Array | string): string => createHash("sha256").update(data).digest("hex");
