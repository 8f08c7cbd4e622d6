/** What a file is that is no preset, and what to do instead. */
export interface StrangeFile {
  readonly says: string;
  readonly set: string;
}

const PRESETS = "presets and plans are YAML";

/** Letters that files of a format begin with; what is no text in UTF-8 has become \ufffd. */
const BEGINNINGS: readonly (readonly [RegExp, kind: string])[] = [
  [/^\ufffdPNG/, "a PNG picture"],
  [/^\ufffd\ufffd\ufffd.{3}(?:JFIF|Exif)/s, "a JPEG picture"],
  [/^GIF8/, "a GIF picture"],
  [/^%PDF-/, "a PDF"],
  [/^\s*<(?:!doctype html|html)\b/i, "a web page"],
  [/^\s*<(?=.{0,2000}<svg\b|svg\b)/is, "an SVG drawing"],
  [/^\s*<\?xml\b/, "an XML file"],
];

/** Returns what a file is, where its beginning or name shows that it is none that could hold a preset. */
export function strangeFile(name: string, text: string): StrangeFile | undefined {
  if (text.startsWith("PK\u0003\u0004")) return packaged(name);
  if (isMesh(name, text)) return mesh(name);
  const [, kind] = BEGINNINGS.find(([beginning]) => beginning.test(text)) ?? [];
  if (kind !== undefined) return { says: `this is ${kind}; ${PRESETS}`, set: WHERE };
  if (/\.md$/i.test(name) && text.startsWith("# ")) {
    return { says: `this is a sheet to read; ${PRESETS}`, set: carrier(name, "md") };
  }
  return json(text) ?? table(name, text) ?? (isBinary(text) ? BINARY : undefined);
}

/** A single NUL in a text is told at its place; text has no more of them. */
const isBinary = (text: string) => text.slice(0, 1000).split("\u0000").length > 4;

const WHERE = "the YAML file of the part or plan, of which tramwright new writes one to begin with";
const BINARY = { says: `this file is no text; ${PRESETS}`, set: WHERE };

/** Returns the command that takes the part from the package that lies beside a file of it. */
function carrier(name: string, ending: string): string {
  const part = name.replace(new RegExp(`\\.${ending}$`, "i"), "");
  const beside = part === name ? "the .3mf beside it" : `${part}.3mf`;
  return `the YAML file it was made from; or check or rebuild ${beside}, which carries it`;
}

function packaged(name: string): StrangeFile {
  const says = `this is a zip package; of packages only .3mf files that make wrote hold a preset`;
  return { says, set: `the same file under a name that ends in .3mf, if it is one; ${name} does not` };
}

function mesh(name: string): StrangeFile {
  return { says: `this is an STL mesh, which holds no sizes to read; ${PRESETS}`, set: carrier(name, "stl") };
}

/** An STL file is text that begins with "solid", or 80 letters, a count and numbers. */
function isMesh(name: string, text: string): boolean {
  if (/^\s*solid\b[^\n]*\n\s*(?:facet|endsolid)\b/.test(text)) return true;
  return /\.stl$/i.test(name) && text.slice(0, 400).includes("\u0000");
}

/** Keys by which a preset is told from other JSON, which YAML would take as well. */
const OURS = ["format", "part", "stage", "printer", "settings", "parameters", "bars", "screws", "motor", "plate"];

function json(text: string): StrangeFile | undefined {
  const data = text.trimStart().startsWith("{") ? parsed(text) : undefined;
  if (data === undefined) return undefined;
  const plan = typeof data.stage === "string" ? ` of ${data.stage.slice(0, 60)}` : "";
  if (data.madeBy !== undefined && Array.isArray(data.sections))
    return { says: `this is the report${plan}, written by make; it is made from the plan`, set: PLAN };
  if (data.madeBy !== undefined && Array.isArray(data.files))
    return { says: `this is the list of files of a set${plan}, written by make; it is made from the plan`, set: PLAN };
  if (OURS.some((key) => Object.hasOwn(data, key))) return undefined;
  return { says: `this is JSON without a key of a preset; ${PRESETS}`, set: WHERE };
}

const PLAN = "the plan it was made from, a YAML file with stage:, as in tramwright report <plan>";

/** Returns what JSON that begins with a brace holds; undefined for anything else. */
function parsed(text: string): Readonly<Record<string, unknown>> | undefined {
  try {
    return JSON.parse(text) as Readonly<Record<string, unknown>>;
  } catch {
    return undefined;
  }
}

/** A table has the same commas or semicolons on its first lines, and no key there. */
function table(name: string, text: string): StrangeFile | undefined {
  const lines = text.split(/\r?\n/, 4).filter((line) => line.trim() !== "");
  const counts = lines.map((line) => line.replace(/"[^"]*"/g, "").split(/[,;\t]/).length);
  const [first = 0, ...others] = counts;
  const alike = first > 2 && others.length > 0 && others.every((count) => count === first);
  const keys = lines.some((line) => /^\s*[\w"'-]+\s*:(?:\s|$)|^\s*[#[{-]|^%/.test(line));
  if (keys || !(alike || (/\.(?:csv|tsv)$/i.test(name) && first > 1))) return undefined;
  const says = `this is a table (CSV), such as make writes of what to buy; ${PRESETS}`;
  return { says, set: WHERE };
}
