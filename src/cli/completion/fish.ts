import type { Choice, CommandWords, Grammar, OptionWords, TableWords } from "./grammar.ts";

/** Returns the completion script for fish, 3.0 and later. */
export function fish({ commands, tables }: Grammar): string {
  return `# Completes tramwright in fish. Written by tramwright completion fish.

# Prints what stands on the command line that is no option, without the program's name.
function __tramwright_operands
    set -l tokens (commandline -opc)
    set -e tokens[1]
    string match -v -- '-*' $tokens
end

function __tramwright_begins
    set -l operands (__tramwright_operands)
    test (count $operands) -eq 0
end

function __tramwright_is
    set -l operands (__tramwright_operands)
    test "$operands[1]" = $argv[1]
end

function __tramwright_table
    set -l operands (__tramwright_operands)
    test "$operands[1]" = stock; and test "$operands[2]" = $argv[1]
end

function __tramwright_names
    set -l operands (__tramwright_operands)
    test "$operands[1]" = $argv[1]; and test (count $operands) -eq 1
end

complete -c tramwright -f
complete -c tramwright -n __tramwright_begins -s h -l help -d 'how it is used'
complete -c tramwright -n __tramwright_begins -l version -d 'which version this is'
${commands.flatMap(commandLines).join("\n")}
${tables.flatMap(tableLines).join("\n")}
`;
}

/** Returns a text in single quotation marks, in which fish knows \\\\ and \\'. */
const quoted = (text: string) => `'${text.replace(/[\\']/g, "\\$&")}'`;

const FILES = {
  none: [],
  presets: ["(__fish_complete_suffix .yaml)"],
  folders: ["(__fish_complete_directories)"],
  any: ["(__fish_complete_path)"],
};

/** Words of a list that fish reads anew are quoted once more. */
const list = ({ words, files }: Choice) => {
  const all = [...words.map((word) => (/^[\w.-]+$/.test(word) ? word : quoted(word))), ...FILES[files]];
  return all.length === 0 ? "" : ` -a ${quoted(all.join(" "))}`;
};

function commandLines({ name, summary, options, operands }: CommandWords): string[] {
  // Names that are taken once stand behind the command only.
  const where = operands.files === "none" ? "__tramwright_names" : "__tramwright_is";
  const given = list(operands);
  return [
    `complete -c tramwright -n __tramwright_begins -a ${name} -d ${quoted(summary)}`,
    ...(given === "" ? [] : [`complete -c tramwright -n '${where} ${name}'${given}`]),
    ...options.map((option) => `complete -c tramwright -n '__tramwright_is ${name}'${optionWords(option)}`),
  ];
}

function optionWords({ names, what, value }: OptionWords): string {
  const switches = names.map((name) => (name.startsWith("--") ? ` -l ${name.slice(2)}` : ` -s ${name.slice(1)}`));
  return `${switches.join("")}${value === undefined ? "" : ` -x${list(value)}`} -d ${quoted(what)}`;
}

function tableLines({ name, rows, fields }: TableWords): string[] {
  return [
    `complete -c tramwright -n '__tramwright_table ${name}'${list({ words: rows, files: "none" })}`,
    ...fields.map((field) => `complete -c tramwright -n '__tramwright_table ${name}' -x -l ${field}`),
  ];
}
