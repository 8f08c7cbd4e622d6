/** Returns a text in single quotation marks, as bash and zsh read it. */
export const quoted = (text: string): string => `'${text.replaceAll("'", `'\\''`)}'`;
