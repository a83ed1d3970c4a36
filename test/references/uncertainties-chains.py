# Standard uncertainties of chains of readings by the Python package uncertainties (3.1.6, Debian), to first order:
# python3 test/references/uncertainties-chains.py > test/references/uncertainties-chains.json
import json

import uncertainties
from uncertainties import ufloat, umath

PI = 3.141592653589793
IN, MIL, G = 25.4, 25.4, 9.80665  # mm, um, m/s2: exact by definition


def case(x):
    return {"value": x.nominal_value, "standard": x.std_dev}


v = ufloat(4.9, 0.15)  # mm/s rms
f = ufloat(25, 0.2)  # Hz
a = ufloat(0.4, 0.006)  # g pk
s = ufloat(1, 0.025)  # sensitivity
x, y = ufloat(5, 0.05), ufloat(3, 0.04)  # mm/s rms
b = ufloat(3.0, 0.04)  # mil pp
r = ufloat(1.0, 0.03)  # mil pp

cases = {
    "velocity in in/s": case(v / IN),
    "velocity to displacement": case(v / (2 * PI * f) * 1000 * 2 * 2**0.5),
    "acceleration to velocity": case(a * G * 1000 / (2 * PI * f)),
    "acceleration to displacement, sensor": case(a * s * G * 1e6 / (2 * PI * f) ** 2 * 2),
    "velocity as a level": case(20 * umath.log10(v * 1e-3 / 1e-9)),
    "sum": case(x + y),
    "difference": case(x - y),
    "ratio": case(x / y),
    "root of the sum of squares": case(umath.sqrt(x * x + y * y)),
    "root of the difference of squares": case(umath.sqrt(x * x - y * y)),
    "vector difference at 50 degrees": case(umath.sqrt(b * b + r * r - 2 * b * r * umath.cos(50 * PI / 180))),
    "a reading by two ways": case(v / IN + v / (2 * PI * f)),
    "error of a reading of itself": case(x - x),
}
print(json.dumps({"package": f"uncertainties {uncertainties.__version__}", "cases": cases}, indent=2))
