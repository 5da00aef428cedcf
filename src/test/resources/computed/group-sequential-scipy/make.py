"""Bounds, exit probabilities and inflation for several looks, by plain Gauss-Legendre quadrature of 400 points a look on the scale of S."""
import json
import sys

import numpy as np
import scipy
from scipy.optimize import brentq
from scipy.stats import norm

X, W = np.polynomial.legendre.leggauss(400)


def exits(fractions, bounds, drift=0.0):
    """Chance of |Z| first crossing at each look."""
    out, s, g, before = [], np.zeros(1), np.ones(1), 0.0
    for t, b in zip(fractions, bounds):
        dt, edge = t - before, b * np.sqrt(t)
        d = np.sqrt(dt)
        ahead = s + drift * dt
        out.append(float((g * (norm.sf((edge - ahead) / d) + norm.cdf((-edge - ahead) / d))).sum()))
        nxt = edge * X
        g = edge * W * (g[None, :] * norm.pdf((nxt[:, None] - ahead[None, :]) / d) / d).sum(1)
        s, before = nxt, t
    return out


def spent(kind, alpha, t):
    if kind == "OBRIEN_FLEMING":
        return 2 * 2 * norm.sf(norm.isf(alpha / 4) / np.sqrt(t))
    return alpha * np.log1p((np.e - 1) * t)


def spending_bounds(kind, alpha, fractions):
    bounds, before = [], 0.0
    for k, t in enumerate(fractions):
        want = spent(kind, alpha, t) - before
        before += want
        bounds.append(brentq(lambda b: exits(fractions[:k + 1], bounds + [b])[-1] / want - 1, 0.1, 12, xtol=1e-13, rtol=1e-14))
    return bounds


def inflation(fractions, bounds, alpha, power):
    plain = brentq(lambda h: sum(exits([1.0], [norm.isf(alpha / 2)], h)) - power, 0.1, 12, xtol=1e-13)
    looks = brentq(lambda h: sum(exits(fractions, bounds, h)) - power, 0.1, 12, xtol=1e-13)
    return (looks / plain) ** 2


cases = []
for kind in ("OBRIEN_FLEMING", "POCOCK"):
    for alpha in (0.05, 0.01):
        for fractions in ([0.5, 1.0], [1 / 3, 2 / 3, 1.0], [0.2, 0.4, 0.6, 0.8, 1.0], [0.3, 0.8, 1.0], [0.45, 1.0]):
            bounds = spending_bounds(kind, alpha, fractions)
            cases.append({"kind": kind, "alpha": alpha, "fractions": fractions, "bounds": bounds,
                          "exitsAtDrift3": exits(fractions, bounds, 3.0),
                          "inflation80": inflation(fractions, bounds, alpha, 0.8),
                          "inflation90": inflation(fractions, bounds, alpha, 0.9)})
flat = {str(k): brentq(lambda c: sum(exits([(i + 1) / k for i in range(k)], [c] * k)) - 0.05, 1.9, 3, xtol=1e-13) for k in range(2, 11)}
json.dump({"python": sys.version.split()[0], "numpy": np.__version__, "scipy": scipy.__version__, "cases": cases, "pocock": flat},
          open("bounds.json", "w"), indent=1)
