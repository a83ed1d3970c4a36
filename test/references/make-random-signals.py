#!/usr/bin/env python3
"""Results of NumPy and SciPy on random records, for test/independent: prints numpy-random-signals.json.

Run with NumPy 2 and SciPy 1.17 (the versions and the seed are in the output). A record is told by its parts (offset,
drift, tones, noise of a linear congruential generator), so that the test makes it anew and the file stays small; all
of it is invented, no machine's vibration. Only numpy.fft, numpy statistics and scipy.signal are used: bins by
frequency, one-sided; windows in their periodic form; integration divides each bin by 2j pi f; the overall with a
window is the root of the sum of the squares of the windowed bins over the sum of the squared weights."""
import json, sys
import numpy as np, scipy
from scipy import signal, stats

SEED = 20261126
rng = np.random.default_rng(SEED)
# SI; the inch of 1959, standard gravity of 1901
UNITS = {"m/s2": (2, 1), "g": (2, 9.80665), "mm/s2": (2, 1e-3), "m/s": (1, 1), "mm/s": (1, 1e-3), "in/s": (1, 0.0254), "um": (0, 1e-6), "mil": (0, 2.54e-5), "mm": (0, 1e-3)}
WINDOWS = {"rectangular": "boxcar", "hann": "hann", "hamming": "hamming", "blackman": "blackman", "blackmanharris": "blackmanharris", "nuttall": "nuttall", "flattop": "flattop"}


def noise(n, state):
    out = np.empty(n)
    for i in range(n):
        state = (1664525 * state + 1013904223) % 2**32
        out[i] = state / 2**32 - 0.5
    return out


def pick(values):
    return values[int(rng.integers(len(values)))]


def r(x, digits=6):
    return float(np.format_float_positional(x, precision=digits, fractional=False))


def parts(n, rate):
    tones = [[r(rng.uniform(0.1, 2)), r(rate * rng.uniform(0.003, 0.4)), r(rng.uniform(0, 6.28))] for _ in range(int(rng.integers(1, 6)))]
    return dict(n=n, rate=rate, offset=r(rng.normal()), drift=r(rng.normal() * 0.2), tones=tones, noise=[r(rng.uniform(0.05, 1)), int(rng.integers(2**32))])


def record(p):
    i = np.arange(p["n"])
    t = i / p["rate"]
    x = p["offset"] + p["drift"] * t + p["noise"][0] * noise(p["n"], p["noise"][1])
    for size, hertz, phase in p["tones"]:
        x = x + size * np.sin(2 * np.pi * hertz * t + phase)
    return x


def flat(x, trend):
    return x if trend == "none" else x - x.mean() if trend == "mean" else signal.detrend(x)


def changed(X, f, steps):
    """Bins differentiated so many times, or integrated where it is below zero; nothing at 0 Hz."""
    Y = np.zeros_like(X)
    Y[1:] = X[1:] * (2j * np.pi * f[1:]) ** steps
    if steps == 0:
        Y[0] = X[0]
    return Y


def sizes(n, last):
    k = np.full(n // 2 + 1, 2.0)
    k[0] = 1
    if n % 2 == 0:
        k[-1] = last
    return k


def overall():
    n, rate = int(pick([256, 500, 729, 1000, 1021, 1024, 1500])), float(pick([512, 1000, 2560, 5120]))
    p = parts(n, rate)
    unit, to = pick(list(UNITS)), pick(list(UNITS))
    detector = pick(["rms", "rms", "rms", "pk", "pp", "avg", "true pk"])
    window = pick(list(WINDOWS)) if detector == "rms" else "rectangular"
    oversample = pick([1, 1, 2, 8]) if detector != "rms" else 1
    trend = pick(["mean", "mean", "linear", "none"])
    df = rate / n
    low = r(rng.uniform(2.2, 30) * df, 5)
    high = r(rng.uniform(low + 3 * df, 0.49 * rate), 5)
    x = flat(record(p), trend)
    w = signal.get_window(WINDOWS[window], n)
    f = np.fft.rfftfreq(n, 1 / rate)
    X = np.fft.rfft(x * w) * UNITS[unit][1] / UNITS[to][1]
    Y = np.where((f >= low) & (f <= high), changed(X, f, UNITS[to][0] - UNITS[unit][0]), 0)
    if detector == "rms":
        value = np.sqrt((sizes(n, 1) * np.abs(Y) ** 2).sum() / n / (w**2).sum())
    else:
        y = np.fft.irfft(Y, n * oversample) * oversample
        value = {"pk": np.abs(y).max(), "true pk": np.abs(y).max(), "pp": np.ptp(y), "avg": np.abs(y).mean()}[detector]
    return dict(record=p, unit=unit, band=[low, high], to=f"{to} {detector}", window=window, oversample=oversample, detrend=trend, value=float(value))


def averaged():
    rate = float(pick([512, 1000, 2560]))
    p = parts(int(pick([1500, 2048, 3001])), rate)
    segment = int(pick([200, 256, 301, 512]))
    lap = int(segment * pick([0, 0.25, 0.5]))
    window, trend = pick(list(WINDOWS)), pick(["mean", "linear", "none"])
    return p, rate, segment, lap, window, trend, dict(record=p, segment=segment, overlap=lap, window=window, detrend=trend)


def bins_of(P, segment):
    # lines that stand out of what rounding leaves
    own = [int(k) for k in np.argsort(P)[-3:]] + [int(q * segment) for q in (0.02, 0.1, 0.25, 0.4)]
    return sorted({k for k in own if k > 0})


def spectrum():
    p, rate, segment, lap, window, trend, told = averaged()
    unit, to = pick(["m/s2", "g", "mm/s", "um"]), pick(["m/s2", "g", "mm/s", "in/s", "um", "mil"])
    detector = pick(["rms", "pk", "pp"])
    f, P = signal.welch(record(p), rate, WINDOWS[window], segment, lap, detrend={"mean": "constant", "linear": "linear", "none": False}[trend], scaling="spectrum")
    steps = UNITS[to][0] - UNITS[unit][0]
    bins = bins_of(P, segment)
    rms = [np.sqrt(P[k]) * UNITS[unit][1] / UNITS[to][1] * (2 * np.pi * f[k]) ** steps for k in bins]
    factor = {"rms": 1, "pk": np.sqrt(2), "pp": 2 * np.sqrt(2)}[detector]
    return dict(told, unit=unit, to=f"{to} {detector}", bins=bins, values=[float(v * factor) for v in rms])


def density():
    p, rate, segment, lap, window, trend, told = averaged()
    unit, to = pick(["m/s2", "g", "mm/s"]), pick(["m/s2", "g", "mm/s", "in/s", "um"])
    f, P = signal.welch(record(p), rate, WINDOWS[window], segment, lap, detrend={"mean": "constant", "linear": "linear", "none": False}[trend], scaling="density")
    Q = np.zeros_like(P)
    Q[1:] = P[1:] * (UNITS[unit][1] / UNITS[to][1]) ** 2 * (2 * np.pi * f[1:]) ** (2 * (UNITS[to][0] - UNITS[unit][0]))
    df = rate / segment
    low = r(rng.uniform(2.2, 12) * df, 5)
    high = r(rng.uniform(low + 5 * df, 0.48 * rate), 5)
    bins = bins_of(P, segment)
    inside = (f >= low) & (f <= high)
    return dict(told, unit=unit, to=to, bins=bins, values=[float(Q[k]) for k in bins], band=[low, high], rms=float(np.sqrt(Q[inside].sum() * df)))


def baseline():
    n = int(rng.integers(3, 60))
    values = np.abs(rng.normal(pick([0.5, 2, 40]), 0.3, n))
    for k in rng.integers(0, n, int(rng.integers(0, 4))):
        values[k] *= pick([1.5, 3, 10])
    values = np.array([r(v, 4) for v in values])
    percent = float(pick([50, 90, 95, 99, 100]))
    median = float(np.median(values))
    spread = float(1.4826 * stats.median_abs_deviation(values))
    far = np.abs(values - median) > 3.5 * spread if spread > 0 else np.zeros(n, bool)
    good = values[~far]
    return dict(values=[float(v) for v in values], percent=percent, median=median, mean=float(values.mean()), deviation=float(values.std(ddof=1)), spread=spread,
                lowest=float(values.min()), highest=float(values.max()), percentile=float(np.percentile(values, percent)), outliers=[int(i) for i in np.flatnonzero(far)],
                good=dict(count=len(good), mean=float(good.mean()), deviation=float(good.std(ddof=1))))


R = dict(seed=SEED, software=dict(python=sys.version.split()[0], numpy=np.__version__, scipy=scipy.__version__))
for name, make, count in (("overalls", overall, 240), ("spectra", spectrum, 60), ("densities", density, 60), ("baselines", baseline, 60)):
    R[name] = [make() for _ in range(count)]
lists = ",\n".join(f'"{name}": [\n' + ",\n".join(json.dumps(one) for one in R.pop(name)) + "\n]" for name in ("overalls", "spectra", "densities", "baselines"))
print(json.dumps(R)[:-1] + ",\n" + lists + "\n}")
