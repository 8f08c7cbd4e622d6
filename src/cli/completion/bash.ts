import type { Choice, CommandWords, Grammar, TableWords } from "./grammar.ts";
import { quoted } from "./quoted.ts";

/** Returns the completion script for bash, 3.2 and later. */
export function bash({ commands, tables }: Grammar): string {
  const valued = [
    ...new Set(commands.flatMap(({ options }) => options.filter(({ value }) => value).flatMap(({ names }) => names))),
  ];
  return `# Completes tramwright in bash. Written by tramwright completion bash.

# Offers the lines of $1 that begin with the word at the cursor.
_tramwright_words() {
  local one bare=\${cur#[\\"\\']}
  while IFS= read -r one; do
    [[ -n $one && $one == "$bare"* ]] && COMPREPLY+=("$one")
  done <<<"$1"
}

# Offers folders, and files whose names match $1.
_tramwright_files() {
  local one
  compopt -o filenames 2>/dev/null
  while IFS= read -r one; do
    [[ \${one##*/} == .* && \${cur##*/} != .* ]] && continue
    [[ -d $one || $one =~ $1 ]] && COMPREPLY+=("$one")
  done < <(compgen -f -- "$cur")
}

_tramwright() {
  local cur=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD - 1]} word= skip= i
  local -a operands=()
  COMPREPLY=()
  # --color=always comes as three words.
  if [[ $cur == = ]]; then
    cur=
  elif [[ $before == = ]]; then
    before=\${COMP_WORDS[COMP_CWORD - 2]}
  fi
  for ((i = 1; i < COMP_CWORD; i++)); do
    word=\${COMP_WORDS[i]}
    if [[ $word == = ]]; then
      skip=1
    elif [[ -n $skip ]]; then
      skip=
    else
      case $word in
        ${valued.join(" | ")}) skip=1 ;;
        -*) ;;
        *) operands+=("$word") ;;
      esac
    fi
  done
  local command=\${operands[0]:-} table=\${operands[1]:-}
  case "$command $before" in
${commands.flatMap(valueCases).join("\n")}
  esac
  if [[ -z $command ]]; then
    _tramwright_words ${quoted([...commands.map(({ name }) => name), "--help", "--version"].join("\n"))}
    return
  fi
  if [[ $cur == -* ]]; then
    case $command in
${commands.map(optionCase).join("\n")}
    esac
    if [[ $command == stock ]]; then
      case $table in
${tables.map(({ name, fields }) => `        ${name}) _tramwright_words ${quoted(fields.map((field) => `--${field}`).join("\n"))} ;;`).join("\n")}
      esac
    fi
    return
  fi
  if [[ $command == stock && -n $table ]]; then
    # Rows have blanks in their names: the shell quotes them as it does files.
    compopt -o filenames 2>/dev/null
    [[ \${#operands[@]} -gt 2 ]] && return
    case $table in
${tables.map(rowCase).join("\n")}
    esac
    return
  fi
  case $command in
${commands.map(({ name, operands }) => `    ${name}) ${offer(operands)} ;;`).join("\n")}
  esac
}

complete -F _tramwright tramwright
`;
}

const FILES = {
  none: [],
  presets: ["_tramwright_files '\\.ya?ml$'"],
  folders: ["_tramwright_files '/$'"],
  any: ["_tramwright_files ."],
};

function offer({ words, files }: Choice): string {
  const offered = words.length === 0 ? [] : [`_tramwright_words ${quoted(words.join("\n"))}`];
  return [...offered, ...FILES[files]].join("; ") || ":";
}

function valueCases({ name, options }: CommandWords): string[] {
  return options.flatMap(({ names, value }) => {
    if (value === undefined) return [];
    const pattern = names.map((one) => `"${name} ${one}"`).join(" | ");
    return [`    ${pattern}) ${offer(value)}; return ;;`];
  });
}

const optionCase = ({ name, options }: CommandWords) =>
  `      ${name}) _tramwright_words ${quoted(options.flatMap(({ names }) => names).join("\n"))} ;;`;

const rowCase = ({ name, rows }: TableWords) => `      ${name}) _tramwright_words ${quoted(rows.join("\n"))} ;;`;
