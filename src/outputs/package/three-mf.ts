import { zipSync } from "fflate/browser";
import { onceForEach } from "../../core/once-for-each.ts";
import type { Mesh } from "../../geometry/mesh.ts";
import { png } from "../picture/png.ts";
import { thumbnail } from "../picture/thumbnail.ts";
import { escaped } from "../svg/marks.ts";
import { buildPlate } from "./build-plate.ts";
import { type Metadata, modelXml } from "./model-xml.ts";

/** A body of a part, by its name and how often it is printed. */
export interface PackedBody {
  readonly name: string;
  readonly mesh: Mesh;
  readonly count: number;
}

/** A part to be packed. */
export interface PackedPart extends Metadata {
  readonly bodies: readonly PackedBody[];
  /** Width of the bed, mm. */
  readonly bedWidth: number;
}

/** Names of the entries that the package consists of. */
export const MODEL = "3D/3dmodel.model";
const TYPES = "[Content_Types].xml";
const RELATIONS = "_rels/.rels";
const PICTURE = "Metadata/thumbnail.png";

/**
 * The hour that every entry is dated, as a local time: zip files keep local times, so the bytes are the same in every
 * time zone. 1980 is the first year that they know.
 */
const DATE = "1980-01-01T12:00:00";

const DECLARATION = '<?xml version="1.0" encoding="UTF-8"?>';
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";

/**
 * Returns a 3MF package (3MF core specification 1.3; ECMA-376 part 2 for the package): every body a named object, as
 * many build items as are to be printed, a picture of them, and the preset. Equal parts, equal bytes.
 */
export function threeMf({ bodies, bedWidth, ...metadata }: PackedPart): Uint8Array {
  const copies = buildPlate(bodies, bedWidth);
  const [only, ...others] = bodies;
  const picture =
    only !== undefined && others.length === 0
      ? pictureOf(only.mesh)
      : png(
          thumbnail(
            bodies.map(({ mesh }, index) => ({ mesh, at: copies.find(({ of }) => of === index)?.at ?? [0, 0] })),
          ),
        );
  const text = (words: string) => new TextEncoder().encode(words);
  // Packing it smaller would take as long as building the part.
  const stored = { level: 0, mtime: DATE } as const;
  return zipSync({
    [TYPES]: [text(contentTypes(metadata.application)), stored],
    [RELATIONS]: [text(RELATIONS_XML), stored],
    [PICTURE]: [picture, stored],
    [MODEL]: [text(modelXml(metadata, bodies, copies)), stored],
  });
}

/** A body by itself looks the same wherever it stands. Parts that are alike share the picture. */
const pictureOf = onceForEach((mesh: Mesh) => png(thumbnail([{ mesh, at: [0, 0] }])));

/** Stored as it is and first: the program knows its own files by its name within their first 200 bytes. */
const contentTypes = (application: string) =>
  [
    `${DECLARATION}<!-- ${escaped(application).replaceAll("--", "-")} -->`,
    `<Types xmlns="${PACKAGE}/content-types">`,
    ' <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>',
    ' <Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>',
    ' <Default Extension="png" ContentType="image/png"/>',
    "</Types>",
    "",
  ].join("\n");

const RELATIONS_XML = [
  DECLARATION,
  `<Relationships xmlns="${PACKAGE}/relationships">`,
  ` <Relationship Target="/${MODEL}" Id="model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>`,
  ` <Relationship Target="/${PICTURE}" Id="picture" Type="${PACKAGE}/relationships/metadata/thumbnail"/>`,
  "</Relationships>",
  "",
].join("\n");
