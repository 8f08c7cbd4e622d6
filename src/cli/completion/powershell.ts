import type { Choice, CommandWords, Grammar } from "./grammar.ts";

/** Returns the completion script for PowerShell, 5 and later: lines for a profile. */
export function powershell({ commands, tables }: Grammar): string {
  return `# Completes tramwright in PowerShell. Written by tramwright completion powershell.
Register-ArgumentCompleter -Native -CommandName tramwright -ScriptBlock {
  param($wordToComplete, $commandAst, $cursorPosition)
  $commands = [ordered]@{
${commands.map(({ name, summary }) => `    ${quoted(name)} = ${quoted(summary)}`).join("\n")}
  }
  $options = @{
${commands.map(({ name, options }) => `    ${quoted(name)} = ${array(options.flatMap(({ names }) => names))}`).join("\n")}
  }
  $names = @{
${commands.map(({ name, operands }) => `    ${quoted(name)} = ${array(operands.words)}`).join("\n")}
  }
  $values = @{
${commands.flatMap(valueLines).join("\n")}
  }
  $rows = @{
${tables.map(({ name, rows }) => `    ${quoted(name)} = ${array(rows)}`).join("\n")}
  }
  $fields = @{
${tables.map(({ name, fields }) => `    ${quoted(name)} = ${array(fields.map((field) => `--${field}`))}`).join("\n")}
  }
  # Words before the one at the cursor; behind an option that takes a value stands no name.
  $operands = @()
  $before = ''
  $skip = $false
  foreach ($element in $commandAst.CommandElements | Select-Object -Skip 1) {
    if ($element.Extent.EndOffset -ge $cursorPosition -and $wordToComplete -ne '') { break }
    $word = $element.Extent.Text
    $takes = $values.Keys | Where-Object { $_ -like "* $word" }
    if (-not $skip -and -not $word.StartsWith('-')) { $operands += $word.Trim([char]39, [char]34) }
    $skip = -not $skip -and [bool]$takes
    $before = $word
  }
  $command = if ($operands.Count -gt 0) { $operands[0] } else { '' }
  $table = if ($operands.Count -gt 1) { $operands[1] } else { '' }
  $offers =
    if ($skip) { $values["$command $before"] }
    elseif ($command -eq '') { @($commands.Keys) + '--help', '--version' }
    elseif ($wordToComplete.StartsWith('-')) {
      @($options[$command]) + $(if ($command -eq 'stock' -and $table -ne '') { $fields[$table] })
    }
    elseif ($command -eq 'stock' -and $table -ne '') { $rows[$table] }
    else { $names[$command] }
  $offers | Where-Object { $_ -and $_.StartsWith($wordToComplete.Trim([char]39, [char]34)) } | ForEach-Object {
    $text = if ($_ -match '[^\\w.-]') { [string][char]39 + $_ + [char]39 } else { $_ }
    $tip = if ($commands.Contains($_)) { $commands[$_] } else { $_ }
    [System.Management.Automation.CompletionResult]::new($text, $_, 'ParameterValue', $tip)
  }
}
`;
}

/** Returns a text in single quotation marks, in which PowerShell knows '' only. */
const quoted = (text: string) => `'${text.replaceAll("'", "''")}'`;

const array = (words: readonly string[]) => `@(${words.map(quoted).join(", ")})`;

/** Where nothing is offered PowerShell itself offers files. */
function valueLines({ name, options }: CommandWords): string[] {
  const words = ({ words }: Choice) => array(words);
  return options.flatMap(({ names, value }) =>
    value === undefined ? [] : names.map((one) => `    ${quoted(`${name} ${one}`)} = ${words(value)}`),
  );
}
