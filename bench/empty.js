// Nothing: what an empty node costs.
