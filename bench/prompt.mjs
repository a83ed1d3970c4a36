// A prompt and nothing else: what a terminal, node and one line of output cost.
process.stdout.write("> ");
