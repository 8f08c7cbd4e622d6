import type { Choice, CommandWords, Grammar, OptionWords, TableWords } from "./grammar.ts";
import { quoted } from "./quoted.ts";

/** Returns the completion script for zsh: a function file `_tramwright` on its path. */
export function zsh({ commands, tables }: Grammar): string {
  const valued = [
    ...new Set(commands.flatMap(({ options }) => options.filter(({ value }) => value).flatMap(({ names }) => names))),
  ];
  const described = commands.map(({ name, summary }) => quoted(`${name}:${plain(summary)}`));
  return `#compdef tramwright
# Completes tramwright in zsh. Written by tramwright completion zsh.

_tramwright() {
  local command table word skip before=$words[CURRENT-1] i
  local -a operands offers
  for ((i = 2; i < CURRENT; i++)); do
    word=$words[i]
    if [[ -n $skip ]]; then
      skip=
    else
      case $word in
        (${valued.join("|")}) skip=1 ;;
        (-*) ;;
        (*) operands+=("$word") ;;
      esac
    fi
  done
  command=$operands[1] table=$operands[2]
  if [[ $PREFIX == --*=* ]]; then
    before=\${PREFIX%%=*}
    compset -P '*='
  fi
  case "$command $before" in
${commands.flatMap(valueCases).join("\n")}
  esac
  if [[ -z $command ]]; then
    offers=(${described.join(" ")} ${quoted("--help:how it is used")} ${quoted("--version:which version this is")})
    _describe command offers
    return
  fi
  if [[ $PREFIX == -* ]]; then
    case $command in
${commands.map(optionCase).join("\n")}
    esac
    if [[ $command == stock ]]; then
      case $table in
${tables.map(({ name, fields }) => `        (${name}) compadd -- ${fields.map((field) => `--${field}`).join(" ")} ;;`).join("\n")}
      esac
    fi
    return
  fi
  if [[ $command == stock && -n $table ]]; then
    (( \${#operands} > 2 )) && return
    case $table in
${tables.map(rowCase).join("\n")}
    esac
    return
  fi
  case $command in
${commands.map(({ name, operands }) => `    (${name}) ${offer(operands)} ;;`).join("\n")}
  esac
}

# Loaded as a function of its own, or read into a running shell.
if [[ $funcstack[1] == _tramwright ]]; then
  _tramwright "$@"
elif (( $+functions[compdef] )); then
  compdef _tramwright tramwright
fi
`;
}

/** A colon ends the word that is described. */
const plain = (text: string) => text.replaceAll(":", ",");

const FILES = { none: [], presets: ["_files -g '*.(yaml|yml)'"], folders: ["_files -/"], any: ["_files"] };

function offer({ words, files }: Choice): string {
  const offered = words.length === 0 ? [] : [`compadd -- ${words.map(quoted).join(" ")}`];
  return [...offered, ...FILES[files]].join("; ") || ":";
}

function valueCases({ name, options }: CommandWords): string[] {
  return options.flatMap(({ names, value }) => {
    if (value === undefined) return [];
    const pattern = names.map((one) => `"${name} ${one}"`).join("|");
    return [`    (${pattern}) ${offer(value)}; return ;;`];
  });
}

const optionCase = ({ name, options }: CommandWords) =>
  `      (${name}) offers=(${options.flatMap(described).join(" ")}); _describe -o option offers ;;`;

const described = ({ names, what }: OptionWords) => names.map((name) => quoted(`${name}:${plain(what)}`));

const rowCase = ({ name, rows }: TableWords) => `      (${name}) compadd -- ${rows.map(quoted).join(" ")} ;;`;
