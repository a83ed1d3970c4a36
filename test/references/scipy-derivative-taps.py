#!/usr/bin/env python3
"""Taps of src/signal/derivative-taps.ts: for each order p of the derivative, the symmetric 17-tap filter whose response
c0 + 2 sum c_k cos(k w) comes nearest to (sin(w/2) / (w/2))^(-p) in relative terms for w up to 0.8 pi (Lawson's
iteration for the least greatest error). Needs NumPy only."""
import numpy as np
D, TOP = 8, 0.8 * np.pi
w = TOP * (0.5 - 0.5 * np.cos(np.pi * (np.arange(2000) + 0.5) / 2000))
A = np.column_stack([np.ones_like(w)] + [2 * np.cos(k * w) for k in range(1, D + 1)])
print("numpy", np.__version__)
for p in (-2, -1, 1, 2):
    t = (np.sin(w / 2) / (w / 2)) ** (-p)
    B, weight = A / t[:, None], np.full(len(w), 1.0)
    for _ in range(400):
        c = np.linalg.lstsq(B * np.sqrt(weight)[:, None], np.sqrt(weight), rcond=None)[0]
        error = np.abs(B @ c - 1)
        weight *= error / error.max() + 1e-6
        weight /= weight.max()
    print(p, "greatest relative error %.2e" % error.max(), "[" + ", ".join("%.16g" % x for x in c) + "]")
