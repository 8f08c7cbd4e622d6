import type { NotationFault } from "./read.ts";

const QUOTES = "put text with such signs in quotation marks";

/** What each fault of the notation is in our words, and what to write instead. */
const WORDS: Readonly<Record<NotationFault, readonly [says: string, set: string]>> = {
  ALIAS_PROPS: ["a reference (*) bears an anchor or a type", "the reference alone"],
  BAD_ALIAS: ["a reference (*) or anchor (&) has no proper name", "a name of letters and digits"],
  BAD_COLLECTION_TYPE: ["a type (!) does not go with what follows", "the value without a type"],
  BAD_DIRECTIVE: ["a line that begins with % is not understood", "the file without it"],
  BAD_DQ_ESCAPE: ["a backslash in quotation marks begins a sign that does not exist", "two backslashes, or ' for \""],
  BAD_INDENT: ["this line is not indented like its neighbours", "the same number of blanks before each key of a block"],
  BAD_PROP_ORDER: ["an anchor or a type stands before its dash or colon", "the value without it"],
  BAD_SCALAR_START: ["text cannot begin with this sign", QUOTES],
  BLOCK_AS_IMPLICIT_KEY: ["a second colon stands on the line", `one key on each line; ${QUOTES}`],
  BLOCK_IN_FLOW: ["a block begins inside brackets", "all of it inside the brackets, parted by commas"],
  DUPLICATE_KEY: ["this key is there twice", "another name for one of the two, or one of them left out"],
  IMPOSSIBLE: ["this cannot be read", "key: value, one per line"],
  KEY_OVER_1024_CHARS: ["a key is far too long", "key: value, one per line"],
  MISSING_CHAR: ["a colon, comma, blank or closing mark is missing", "key: value, and every bracket and quote closed"],
  MULTILINE_IMPLICIT_KEY: ["a key has no colon on its line", "key: value, one per line"],
  MULTIPLE_ANCHORS: ["a value has two anchors (&)", "one, or none"],
  MULTIPLE_DOCS: ["a second document begins", "one preset in each file, without a line ---"],
  MULTIPLE_TAGS: ["a value has two types (!)", "the value without a type"],
  NON_STRING_KEY: ["a key is not text", "key: value, one per line"],
  RESOURCE_EXHAUSTION: ["blocks are nested too deeply", "key: value, one per line"],
  TAB_AS_INDENT: ["a tab stands where blanks must", "blanks"],
  TAG_RESOLVE_FAILED: ["a type (!) is not known", "the value without a type"],
  UNEXPECTED_TOKEN: ["something stands where nothing can", `key: value, one per line; ${QUOTES}`],
};

/** Returns what is wrong with the notation and what to write. */
export function yamlWords(code: NotationFault): readonly [says: string, set: string] {
  return WORDS[code] ?? WORDS.IMPOSSIBLE;
}
