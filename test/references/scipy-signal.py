#!/usr/bin/env python3
"""Results of SciPy for test/signal: prints scipy-signal.json.

Run with Debian's python3-scipy (the versions are in the output). The signals come from a formula that the tests repeat
(integers of a linear congruential generator, sines); two come from measured records beside this file.
All angles in hertz, one-sided spectra, windows in their periodic form (sym=False)."""
import json, os, re, sys
import numpy as np, scipy
from scipy import signal, stats

HERE = os.path.dirname(os.path.abspath(__file__))
G = 9.80665


def noise(n):
    state, out = 20261125, np.empty(n)
    for i in range(n):
        state = (1664525 * state + 1013904223) % 2**32
        out[i] = state / 2**32 - 0.5
    return out


def invented(n, rate):
    """Offset, drift, three tones, noise and an impact every 0.1 s: invented, no machine's vibration."""
    i = np.arange(n)
    t = i / rate
    x = 0.3 + 0.05 * t + 1.2 * np.sin(2 * np.pi * 24.7 * t) + 0.4 * np.sin(2 * np.pi * 49.4 * t + 1) + 0.25 * np.sin(2 * np.pi * 333.3 * t + 2)
    since = i % int(rate // 10)
    return x + 0.5 * noise(n) + 2 * np.exp(-since / 20.0) * np.cos(0.9 * since)


def column(name):
    return np.loadtxt(os.path.join(HERE, name), skiprows=1)


def c(z):
    return [float(np.real(z)), float(np.imag(z))]


def band_ms(X, n, f, lo, hi):
    k = np.full(len(X), 2.0)
    k[0] = 1
    if n % 2 == 0:
        k[-1] = 1
    sel = (f >= lo * (1 - 1e-12)) & (f <= hi * (1 + 1e-12))
    return float((k[sel] * np.abs(X[sel]) ** 2).sum() / n**2)


def analyse(x, rate, bands):
    n = len(x)
    y = x - x.mean()
    rms = float(np.sqrt((y**2).mean()))
    out = dict(n=n, rate=rate)
    out["time"] = dict(mean=float(x.mean()), rms=rms, peak=float(np.abs(y).max()), pp=float(np.ptp(y)), average=float(np.abs(y).mean()),
                       crest=float(np.abs(y).max()) / rms, skewness=float(stats.skew(x)), kurtosis=float(stats.kurtosis(x, fisher=False)),
                       rms_without_line=float(np.sqrt((signal.detrend(x) ** 2).mean())))
    f = np.fft.rfftfreq(n, 1 / rate)
    X = np.fft.rfft(y)
    with np.errstate(divide="ignore", invalid="ignore"):
        V, S, J = X / (2j * np.pi * f), -X / (2 * np.pi * f) ** 2, X * 2j * np.pi * f
    overall = []
    for lo, hi in bands:
        sel = (f >= lo) & (f <= hi)
        v, s = np.fft.irfft(np.where(sel, V, 0), n), np.fft.irfft(np.where(sel, S, 0), n)
        overall.append(dict(band=[lo, hi], a_rms=np.sqrt(band_ms(X, n, f, lo, hi)), v_rms=np.sqrt(band_ms(V, n, f, lo, hi)), s_rms=np.sqrt(band_ms(S, n, f, lo, hi)),
                            j_rms=np.sqrt(band_ms(J, n, f, lo, hi)), v_peak=float(np.abs(v).max()), v_average=float(np.abs(v).mean()), s_pp=float(np.ptp(s))))
    out["overall"] = overall
    # an order-3 analogue Butterworth band-pass applied to every bin
    lo, hi = bands[0]
    b, a = signal.butter(3, [2 * np.pi * lo, 2 * np.pi * hi], "bandpass", analog=True)
    z, p, k = signal.butter(3, [2 * np.pi * lo, 2 * np.pi * hi], "bandpass", analog=True, output="zpk")
    _, h = signal.freqs_zpk(z, p, k, 2 * np.pi * f[1:])
    out["overall_3db"] = dict(band=[lo, hi], order=3, v_rms=float(np.sqrt(band_ms(np.concatenate([[0], V[1:] * h]), n, f, 0, rate))))
    w = signal.windows.hann(n, sym=False)
    out["overall_hann"] = dict(band=[lo, hi], v_rms=float(np.sqrt(sum(2 * np.abs(np.fft.rfft(y * w)[k] / (2j * np.pi * f[k])) ** 2 for k in range(n // 2 + 1) if lo <= f[k] <= hi) / n / (w**2).sum())))
    spectra = {}
    for name in ("boxcar", "hann", "hamming", "blackman", "blackmanharris", "flattop"):
        fw, P = signal.welch(x, rate, signal.get_window(name, n), n, 0, detrend="constant", scaling="spectrum")
        bins = sorted({0, 1, 2, n // 2 - 1, n // 2} | {int(n * q) for q in (0.003, 0.0048, 0.0097, 0.03, 0.065, 0.1, 0.25, 0.4)} | {int(P.argmax())})
        spectra[name] = dict(bins=bins, rms=[float(np.sqrt(P[k])) for k in bins], power=float(P.sum()))
    out["spectra"] = spectra
    welch = []
    for window, seg, lap, trend in (("hann", 1024, 512, "constant"), ("blackmanharris", 1000, 250, "linear"), ("flattop", 999, 499, "constant")):
        fw, P = signal.welch(x, rate, window, seg, lap, detrend=trend, scaling="density")
        bins = sorted({0, 1, 5, 10, 50, 100, seg // 4, seg // 2 - 1, seg // 2, int(P.argmax())})
        lo, hi = max(bands[0][0], 2 * rate / seg), bands[0][1]
        welch.append(dict(window=window, segment=seg, overlap=lap, trend=trend, bins=bins, density=[float(P[k]) for k in bins],
                          band=[lo, hi], rms=float(np.sqrt(P[(fw >= lo) & (fw <= hi)].sum() * rate / seg))))
    out["welch"] = welch
    return out


def taps(p):
    """The taps c0, c1, ... of the library for the derivative of order p, as its source has them."""
    source = open(os.path.join(HERE, "../../src/signal/derivative-taps.ts")).read()
    row = re.search(r'"%d": \{ error: [^,]+, taps: \[([^\]]+)\]' % p, source).group(1)
    return [float(q) for q in row.split(",")]


def stream(x, rate, band, order):
    """The causal path: band-pass from rest on x less its first sample; integrals by taking zeros at z = 1 out."""
    y = x - x[0]
    settle = len(x) // 4
    out = dict(band=list(band), order=order, settle=settle / rate)
    out["a_rms"] = float(np.sqrt((signal.sosfilt(signal.butter(order, band, "bandpass", fs=rate, output="sos"), y)[settle:] ** 2).mean()))
    z, p, k = signal.butter(order, band, "bandpass", fs=rate, output="zpk")
    for name, count in (("v", 1), ("s", 2)):
        left = list(z)
        for _ in range(count):
            left.remove(min(left, key=lambda q: abs(q - 1)))
        filtered = signal.sosfilt(signal.zpk2sos(left, p, k / rate**count), y)
        half = taps(-count)
        corrected = signal.lfilter(half[:0:-1] + half, 1.0, filtered)
        out[name + "_rms"] = float(np.sqrt((corrected[settle:] ** 2).mean()))
    return out


signals = dict(even=(invented(8192, 5120.0), 5120.0), mixed=(invented(10000, 10240.0), 10240.0), odd=(invented(4995, 2560.0), 2560.0), prime=(invented(4099, 2560.0), 2560.0))
R = dict(software=dict(python=sys.version.split()[0], numpy=np.__version__, scipy=scipy.__version__), signals={})
for name, (x, rate) in signals.items():
    R["signals"][name] = analyse(x, rate, [(10, 1000), (20, 60)])
R["signals"]["blower"] = analyse(column("measured-blower-gearbox-r0.csv"), 10240.0, [(10, 1000), (10, 100)])
R["signals"]["fan"] = analyse(column("measured-fan-3-60-x.csv"), 50.0, [(2, 20), (10, 25)])
designs = []
for kind, edges in (("lowpass", [1000]), ("highpass", [10]), ("bandpass", [10, 1000]), ("bandpass", [2, 1000]), ("bandpass", [40, 60])):
    for order in (1, 2, 3, 4, 5, 8):
        for rate in (5120, 25600, 51200):
            z, p, k = signal.butter(order, edges if len(edges) > 1 else edges[0], kind, fs=rate, output="zpk")
            f = [1, 9, edges[0], 12.6, 50, 300, edges[-1], 2000]
            _, h = signal.freqz_zpk(z, p, k, worN=np.array(f, float), fs=rate)
            designs.append(dict(type=kind, order=order, edges=edges, rate=rate, hertz=f, response=[c(q) for q in h]))
R["butterworth"] = designs
R["stream"] = [stream(invented(40000, 5120.0), 5120.0, band, order) for band, order in (((10, 1000), 3), ((10, 1000), 4), ((2, 500), 5))]
print(json.dumps(R))
