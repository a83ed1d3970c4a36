#!/usr/bin/env python3
"""Records as they come, made by NumPy, SciPy and the `wave` module of Python: prints scipy-records.json.

Spectra of one record by every window (lines and the level that the record itself has), WAVE files of 16, 24 and 32 bits
and of floating-point numbers, and a natural cubic spline through uneven times."""
import base64, io, json, sys, wave
import numpy as np, scipy
from scipy.interpolate import CubicSpline
from scipy.io import wavfile
from scipy.signal import periodogram

rng = np.random.default_rng(2031)
RATE, N = 1024, 512

# each of these goes round a whole number of times, so that the level is that of the record
t = np.arange(N) / RATE
x = 3 * np.cos(2 * np.pi * 48 * t) + 1.2 * np.cos(2 * np.pi * 144 * t + 1) + 0.4 * np.cos(2 * np.pi * 300 * t + 2)
spectra = {}
for name in ("boxcar", "hann", "hamming", "blackman", "blackmanharris", "nuttall", "flattop"):
    f, p = periodogram(x, RATE, window=name, detrend=False, scaling="spectrum")
    spectra[name] = dict(hertz=f.tolist(), rms=np.sqrt(p).tolist())
    w = scipy.signal.get_window(name, N)
    spectra[name]["bandwidth"] = float(N * (w**2).sum() / w.sum() ** 2)


def waved(width, channels):
    """A file of whole numbers by the module that comes with Python."""
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setnchannels(len(channels))
        file.setsampwidth(width)
        file.setframerate(RATE)
        frames = b"".join(int(v).to_bytes(width, "little", signed=True) for row in zip(*channels) for v in row)
        file.writeframes(frames)
    return base64.b64encode(out.getvalue()).decode()


def counts(width, signal):
    return np.round(signal / 8 * 2 ** (8 * width - 1)).astype(int).tolist()


short = x[:128]
waves = {}
for width in (2, 3, 4):
    channels = [counts(width, short), counts(width, -short[::-1])]
    waves[f"{8 * width} bits"] = dict(file=waved(width, channels), channels=channels)
out = io.BytesIO()
wavfile.write(out, RATE, np.stack([short, short / 2], 1).astype(np.float32))
waves["floating point"] = dict(
    file=base64.b64encode(out.getvalue()).decode(),
    channels=[short.astype(np.float32).tolist(), (short / 2).astype(np.float32).tolist()],
)

uneven = np.sort(np.arange(96) / 96 + rng.uniform(-0.3, 0.3, 96) / 96)
values = np.sin(2 * np.pi * 5 * uneven) + 0.3 * np.cos(2 * np.pi * 11 * uneven)
even = np.linspace(uneven[0], uneven[-1], 96)
spline = CubicSpline(uneven, values, bc_type="natural")(even)

software = dict(python=sys.version.split()[0], numpy=np.__version__, scipy=scipy.__version__)
print(
    json.dumps(
        dict(
            software=software,
            rate=RATE,
            rms=float(np.sqrt(np.mean(x**2))),
            spectra=spectra,
            waves=waves,
            spline=dict(times=uneven.tolist(), values=values.tolist(), even=spline.tolist()),
        )
    )
)
