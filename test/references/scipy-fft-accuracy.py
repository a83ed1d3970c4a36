#!/usr/bin/env python3
"""Error of the library's transform and of fft.js against SciPy's in 80-bit arithmetic, over random sums of sines.

Prints, for each length, the root mean square error relative to the spectrum: what decided for a transform of our own.
Run from the root of the repository; needs SciPy, Node and the development dependencies."""
import os, subprocess, tempfile
import numpy as np, scipy.fft

PROGRAM = """
import FFT from "fft.js";
import { readFileSync, writeFileSync } from "node:fs";
import { realFftOf } from "./src/signal/real-fft";
const [n, from, to] = [Number(process.argv[2]), process.argv[3], process.argv[4]];
const all = new Float64Array(new Uint8Array(readFileSync(from)).buffer);
const [ours, theirs, out] = [realFftOf(n), new FFT(n), []];
for (let i = 0; i < all.length; i += n) {
  const x = all.slice(i, i + n);
  const bins = theirs.createComplexArray();
  theirs.realTransform(bins, x);
  out.push(ours.bins(ours.transform(x), 0, n / 2), Float64Array.from(bins.slice(0, n + 2)));
}
writeFileSync(to, Buffer.concat(out.map((a) => Buffer.from(a.buffer))));
"""

print("numpy", np.__version__, "scipy", scipy.__version__)
with tempfile.TemporaryDirectory() as folder:
    script, source, result = (os.path.join(folder, name) for name in ("run.mjs", "in", "out"))
    subprocess.run(["npx", "esbuild", "--bundle", "--format=esm", "--platform=node", "--loader=ts", "--log-level=error", "--outfile=" + script],
                   input=PROGRAM.encode(), check=True)
    rng = np.random.default_rng(1)
    for n in (1024, 2048, 4096, 8192, 16384, 65536, 2**18):
        i, cases = np.arange(n), 200 if n < 20000 else 30
        signals = [sum(a * np.sin(2 * np.pi * f * i + p) for a, f, p in zip(rng.uniform(0.1, 1, 4), rng.uniform(0.001, 0.49, 4), rng.uniform(0, 6, 4)))
                   for _ in range(cases)]
        np.concatenate(signals).tofile(source)
        subprocess.run(["node", script, str(n), source, result], check=True)
        bins, error = np.fromfile(result).reshape(cases, 2, n + 2), np.zeros(2)
        for x, pair in zip(signals, bins):
            exact = scipy.fft.rfft(x.astype(np.longdouble))
            size = float((np.abs(exact) ** 2).sum())
            for which in (0, 1):
                error[which] += float((np.abs(pair[which].view(complex).astype(np.clongdouble) - exact) ** 2).sum()) / size
        ours, theirs = np.sqrt(error / cases)
        print("%7d samples: ours %.3e, fft.js %.3e, ratio %.3f" % (n, ours, theirs, ours / theirs))
