/** What a shell runs to complete the words of `veladis`, by the shell's name. */
export const completionScripts = {
  bash: `_veladis() {
  local word typed=\${COMP_WORDS[COMP_CWORD]}
  COMPREPLY=()
  while IFS= read -r word; do
    # within quotation marks a word stands as it is
    [[ $typed == [\\"\\']* ]] || printf -v word %q "$word"
    COMPREPLY+=("$word")
  done < <(veladis completion --words -- "\${COMP_WORDS[@]:1:COMP_CWORD-1}" "\${typed//[\\"\\'\\\\]/}" 2>/dev/null)
}
complete -o default -F _veladis veladis
`,
  zsh: `_veladis() {
  local -a found
  found=("\${(@f)$(veladis completion --words -- "\${(@Q)words[2,CURRENT]}" 2>/dev/null)}")
  if [[ -n $found ]]; then compadd -- $found; else _files; fi
}
compdef _veladis veladis
`,
  fish: `function __veladis
  set -l words (commandline -opc) (commandline -ct | string collect --allow-empty)
  veladis completion --words -- $words[2..] 2>/dev/null
end
complete -c veladis -a '(__veladis)'
`,
} as const;
