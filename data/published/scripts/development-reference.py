"""Reference values for time, temperature, cooling and contrast.

Made with NumPy and SciPy (their versions, and that of Python, are printed into the file). Run:
    python3 data/published/scripts/development-reference.py > data/published/scipy-development.json
Every value is computed by another way than the library's own: quadrature for closed forms, Brent's
method for inverses, an ODE solver for the two bodies, a polynomial fit for the tables.
"""

import json
import sys

import numpy as np
import scipy
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq, curve_fit

R = 8.31446261815324
K = 273.15
checks = []


def add(id, quantity, published, inputs, rel=None, abs_=None, reason="twelve digits of double precision"):
    tolerance = {"reason": reason}
    if rel is not None:
        tolerance["rel"] = rel
    if abs_ is not None:
        tolerance["abs"] = abs_
    checks.append({"id": id, "quantity": quantity, "published": published, "tolerance": tolerance, "inputs": inputs})


def rate(energy, reference, t):
    return np.exp(energy * 1000 / R * (1 / (reference + K) - 1 / (t + K)))


factors = [1.3, 1.5, 1.9, 2.0, 2.5, 2.8, 3.0]
add("energy-of-factor", "activation energy between 15 and 25 °C of factors per 10 °C, kJ/mol",
    [brentq(lambda e: rate(e, 15, 25.0) - q, 1, 200, xtol=1e-13) for q in factors], {"factors": factors}, rel=1e-11)
add("time-at-temperature", "time at 18 and 24 °C of 8 min at 20 °C with 60 kJ/mol, min",
    [8 / rate(60, 20, t) for t in (18, 24)], {"timeMin": 8, "energy": 60, "temperatures": [18, 24]}, rel=1e-12)
add("newton-cooling", "temperature after 0, 5, 10, 20, 30 min from 38 °C towards 20 °C, 0.012 per minute, °C",
    list(solve_ivp(lambda t, y: [-0.012 * (y[0] - 20)], (0, 30), [38.0], method="DOP853", rtol=1e-13, atol=1e-13,
                   t_eval=[0, 5, 10, 20, 30]).y[0]),
    {"start": 38, "around": 20, "rate": 0.012, "times": [0, 5, 10, 20, 30]}, rel=1e-11)


def newton(start, around, k):
    return lambda t: around + (start - around) * np.exp(-k * t)


cases = [(24, 18, 0.02, 8), (16, 26, 0.2, 12), (22.5, 14, 0.05, 20), (20, 20, 0.3, 9), (25, 19, 3.0, 30)]
add("factor-dose", "dose of a factor 2.4 per 10 °C under Newton cooling (closed form in the library), min at 20 °C",
    [quad(lambda t: 2.4 ** ((newton(s, a, k)(t) - 20) / 10), 0, d, epsabs=0, epsrel=1e-13, limit=500)[0]
     for s, a, k, d in cases], {"factor": 2.4, "cases": cases}, rel=1e-11)
add("arrhenius-dose", "dose of 55 kJ/mol under Newton cooling, min at 20 °C",
    [quad(lambda t: rate(55, 20, newton(s, a, k)(t)), 0, d, epsabs=0, epsrel=1e-13, limit=500)[0]
     for s, a, k, d in cases], {"energy": 55, "cases": cases}, rel=1e-10, reason="tolerance asked of the quadrature")
profile = [[0, 23.5], [2, 22.1], [5, 21.0], [9, 20.4], [12, 20.9]]
px, py = zip(*profile)
add("profile-dose", "dose over a logged profile, factor 2.4 and 55 kJ/mol, min at 20 °C",
    [sum(quad(lambda t: f(np.interp(t, px, py)), a, b, epsabs=0, epsrel=1e-13)[0] for a, b in zip(px, px[1:]))
     for f in (lambda x: 2.4 ** ((x - 20) / 10), lambda x: rate(55, 20, x))],
    {"factor": 2.4, "energy": 55, "profile": profile}, rel=1e-10, reason="tolerance asked of the quadrature")
add("pour-out", "when to pour out for 9 min at 20 °C, 60 kJ/mol, from 22.5 °C towards 16 °C, 0.02 per minute, min",
    brentq(lambda x: quad(lambda t: rate(60, 20, newton(22.5, 16, 0.02)(t)), 0, x, epsabs=0, epsrel=1e-13)[0] - 9,
           1, 20, xtol=1e-13), {"energy": 60, "targetMin": 9, "start": 22.5, "around": 16, "rate": 0.02}, rel=1e-9,
    reason="tolerance of the root on top of the quadrature")
two = solve_ivp(lambda t, y: [-0.1 * (y[0] - y[1]), 0.01 * (y[0] - y[1]) - 0.003 * (y[1] - 16)], (0, 60), [24.0, 20.0],
                method="DOP853", rtol=1e-13, atol=1e-13, t_eval=[10, 60]).y
add("two-bodies", "tank and water bath after 10 and 60 min (tank, bath, tank, bath), °C",
    [two[0][0], two[1][0], two[0][1], two[1][1]],
    {"tankMl": 600, "start": 24, "tankRate": 0.1, "bathMl": 6000, "bathStart": 20, "bathRate": 0.003, "room": 16,
     "times": [10, 60]}, rel=1e-11)
c1, t1, c2, t2 = 0.7, 4, 1.05, 8
add("two-time-gamma", "k, gamma infinity and time for gamma 0.65 from 0.70 at 4 min and 1.05 at 8 min",
    [-np.log(c2 / c1 - 1) / t1, c1**2 / (2 * c1 - c2), -np.log(1 - 0.65 / (c1**2 / (2 * c1 - c2))) / (-np.log(c2 / c1 - 1) / t1)],
    {"first": [4, 0.7], "second": [8, 1.05], "wanted": 0.65}, rel=1e-11)
x = np.array([5, 7, 9, 11, 14, 18.0])
y = np.array([0.41, 0.51, 0.60, 0.66, 0.73, 0.80])
p, cov = curve_fit(lambda t, a, k: a * (1 - np.exp(-k * t)), x, y, p0=[0.9, 0.1], xtol=1e-15, ftol=1e-15, gtol=1e-15)
add("contrast-fit", "ceiling, rate and their standard errors of the invented contrast readings",
    [*p, *np.sqrt(np.diag(cov))], {"times": list(x), "contrasts": list(y)}, rel=1e-6,
    reason="curve_fit differentiates numerically")
contrast = lambda t: 0.9 * (1 - np.exp(-0.35 * t))
dose = lambda t: 3.25 * rate(60, 37.8, t)
limits = [brentq(lambda t: contrast(dose(t)) - contrast(3.25) - s * 0.01, 30, 45, xtol=1e-13) - 37.8 for s in (-1, 1)]
add("contrast-tolerance", "temperatures below and above 37.8 °C at which contrast is off by 0.01, °C",
    [-limits[0], limits[1]], {"energy": 60, "ceiling": 0.9, "rate": 0.35, "timeMin": 3.25, "contrast": 0.01}, rel=1e-9,
    reason="difference of two nearly equal temperatures")

json.dump({
    "source": f"SciPy {scipy.__version__}, NumPy {np.__version__}, Python {sys.version.split()[0]}: time, temperature, cooling and contrast",
    "howObtained": "computed with data/published/scripts/development-reference.py",
    "checks": json.loads(json.dumps(checks, default=float)),
}, sys.stdout, ensure_ascii=False, indent=2)
print()
