import type { CommandPage } from "../options/command-page";

/** The page of `completion`. */
export const completionPage = {
  summary: "a script for bash, zsh or fish that completes commands, options and their values",
  usage: "veladis completion bash|zsh|fish",
  does: "A script that has the shell complete commands, options, and values where there is a closed list: schemes, units, reading types, formats of sheets, words of relays.",
  examples: ['eval "$(veladis completion bash)"', "veladis completion --words -- judge --sch"],
  words: [
    ["bash", 'eval "$(veladis completion bash)" in ~/.bashrc'],
    ["zsh", 'eval "$(veladis completion zsh)" in ~/.zshrc, behind compinit'],
    ["fish", "veladis completion fish | source, in ~/.config/fish/config.fish"],
  ],
  texts: { values: ["bash", "zsh", "fish"] },
  options: {
    words: { help: "what can follow the words behind --, the last of them unfinished; one a line" },
  },
} as const satisfies CommandPage;
