import { PNG } from "pngjs";
import type { Picture } from "./canvas.ts";

/** Returns the bytes of a PNG file with this picture. */
export function png({ width, height, pixels }: Picture): Uint8Array {
  const image = new PNG({ width, height });
  image.data.set(pixels);
  return PNG.sync.write(image);
}
