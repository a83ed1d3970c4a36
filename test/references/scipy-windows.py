#!/usr/bin/env python3
"""Windows of SciPy for test/signal: prints scipy-windows.json (the versions are in the output).

Every window that SciPy knows by a name alone, under each of its names, in its periodic form (sym=False)."""
import json, sys
import numpy as np, scipy
from scipy.signal.windows import _windows, get_window

LENGTHS = (12, 15)


def alone(names, needs):
    """Names of a window that needs no parameter; the general ones do."""
    return [] if needs is True else list(names)


rows = []
for names, (_, needs) in _windows._WIN_FUNC_DATA.items():
    known = alone(names, needs)
    if known:
        weights = {str(n): get_window(known[0], n).tolist() for n in LENGTHS}
        long = get_window(known[0], 1000)
        rows.append(dict(names=known, weights=weights, bandwidth=float(1000 * (long**2).sum() / long.sum() ** 2)))
print(json.dumps(dict(software=dict(python=sys.version.split()[0], numpy=np.__version__, scipy=scipy.__version__), windows=rows)))
