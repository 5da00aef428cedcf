"""What an audit must find, from the rules as they are written down (README.md beside this file) and scipy alone.

Run in this folder: python3 reckon.py > figures.csv
"""
import csv
import json
import math
import os
import re

import numpy as np
from scipy import optimize, stats

DEMO = "../../../../../demo-data/published"
HERE = "."
INF = math.inf
Z = stats.norm.isf(0.025)
LEAST, USUAL, MOST = (0.002, 0.003, 0.003), (0.007, 0.010, 0.010), (0.016, 0.020, 0.020)

# composite Gauss-Legendre over -10 … 10
_x, _w = np.polynomial.legendre.leggauss(12)
_edges = np.linspace(-10, 10, 101)
NODES = np.concatenate([(a + b) / 2 + (b - a) / 2 * _x for a, b in zip(_edges, _edges[1:])])
WEIGHTS = np.tile((_edges[1] - _edges[0]) / 2 * _w, 100)
PDF = stats.norm.pdf(NODES)
CDF = stats.norm.cdf(NODES)


class Unchanged:
    """D = s·(max of m − max of n) + sigma·Z; m or n is 0 where that figure is no maximum."""

    def __init__(self, s, sigma, before, after):
        self.s, self.sigma, self.before, self.after = s, sigma, before, after

    def sf(self, d):
        """By integrating over the place of the maximum after, whose density is m·phi·Phi^(m−1)."""
        s, sigma, n, m = self.s, self.sigma, self.before, self.after
        if n == 0 and m == 0:
            return stats.norm.sf(d / sigma)
        if n == 0:
            return float(np.sum(WEIGHTS * m * PDF * CDF ** (m - 1) * stats.norm.sf((d - s * NODES) / sigma)))
        if m == 0:
            return float(np.sum(WEIGHTS * n * PDF * CDF ** (n - 1) * stats.norm.sf((d + s * NODES) / sigma)))
        total = 0.0
        for z, weight in zip(NODES[abs(NODES) < 8.5], (WEIGHTS * PDF)[abs(NODES) < 8.5]):
            u = (d - sigma * z) / s
            total += weight * float(np.sum(WEIGHTS * m * PDF * CDF ** (m - 1) * stats.norm.cdf(NODES - u) ** n))
        return total

    def minus(self):
        return Unchanged(self.s, self.sigma, self.after, self.before)

    def mean(self):
        def top(n):
            return float(np.sum(WEIGHTS * NODES * n * PDF * CDF ** (n - 1))) if n else 0.0
        return self.s * (top(self.after) - top(self.before))

    def isf(self, p):
        reach = 14 * (self.sigma + 2 * self.s)
        if self.before == 0 and self.after == 0:
            return self.sigma * stats.norm.isf(p)
        return optimize.brentq(lambda d: self.sf(d) - p, -reach, reach, xtol=1e-12, rtol=1e-13)


class Difference:
    """A published difference under what is assumed of it."""

    def __init__(self, d, level, half, quotes, scatter, freedom, refits, days, shift, critical):
        self.d, self.level, self.shift, self.critical = d, level, shift, critical
        (kind_b, n_b), (kind_a, n_a) = quotes
        best_b, best_a = (n_b if kind_b == "best" and n_b > 1 else 0), (n_a if kind_a == "best" and n_a > 1 else 0)
        pull, refit, day = (level * share for share in scatter)
        mean = sum(pull ** 2 / n for n, best in ((n_b, best_b), (n_a, best_a)) if not best)
        rest = [refits * refit ** 2, days * day ** 2, 2 * half ** 2 / 3]
        self.dist = Unchanged(pull, math.sqrt(mean + sum(rest)), best_b, best_a)
        parts = [pull ** 2 * sum(1.0 if best else 1.0 / n for n, best in ((n_b, best_b), (n_a, best_a))), rest[0], rest[1]]
        open_ = sum(part ** 2 / known for part, known in zip(parts, freedom))
        self.df = (sum(parts) + rest[2]) ** 2 / open_ if open_ > 0 else INF

    def t_sf(self, t):
        return stats.norm.sf(t) if math.isinf(self.df) else stats.t.sf(t, self.df)

    def t_isf(self, p):
        return stats.norm.isf(p) if math.isinf(self.df) else stats.t.isf(p, self.df)

    def tail(self, dist, d):
        """1 − F_nu(z), z the normal deviate passed as seldom as d."""
        if dist.before == 0 and dist.after == 0:
            return self.t_sf(d / dist.sigma)
        return self.t_sf(stats.norm.isf(dist.sf(d)))

    def chance(self):
        size = abs(self.d)
        return min(1, self.tail(self.dist, size) + self.tail(self.dist.minus(), size))

    def reached(self, t):
        both, minus = 2 * stats.norm.sf(t), self.dist.minus()
        if self.dist.before == 0 and self.dist.after == 0:
            return self.dist.sigma * t
        return optimize.brentq(lambda c: self.dist.sf(c) + minus.sf(c) - both, 0, 14 * (self.dist.sigma + 2 * self.dist.s), xtol=1e-12)

    def tipping(self, pull):
        return abs(self.d) / self.reached(self.t_isf(0.025)) * pull

    def interval(self):
        p = stats.norm.sf(self.t_isf(stats.norm.sf(self.critical)))
        shift = self.shift * self.level
        return self.d - self.dist.isf(p) - shift, self.d + self.dist.minus().isf(p) + shift

    def errors(self):
        """Wrong sign and exaggeration at a true gain of 1 %, by summing the density of D on a fine grid."""
        theta = 0.01 * self.level
        c = self.reached(self.t_isf(stats.norm.sf(self.critical)))
        minus = self.dist.minus()
        right, wrong = self.tail(self.dist, c - theta), self.tail(minus, c + theta)
        scale = math.sqrt(self.dist.sigma ** 2 + self.dist.s ** 2)
        size = c * (right + wrong) + beyond(lambda x: self.tail(self.dist, x - theta), lambda x: self.tail(minus, x + theta), c, scale)
        return wrong / (right + wrong), size / (theta * (right + wrong))


def beyond(above, below, c, scale):
    """Integral of both tails from c to infinity, over x = c + scale·(e^y − 1)."""
    x, w = np.polynomial.legendre.leggauss(120)
    top = math.log(1 + 1e6)
    y, w = top * (x + 1) / 2, w * top / 2
    return sum(weight * scale * math.exp(at) * (above(c + scale * math.expm1(at)) + below(c + scale * math.expm1(at)))
               for at, weight in zip(y, w))


# ---- air ----

def standard_pressure(metres):
    return 101325 * (1 - 0.0065 * metres / 288.15) ** 5.255876


FACTORS = {
    "none": lambda t, p, v: 1.0,
    "sae-j1349": lambda t, p, v: 1.180 * 99000 / (p - v) * math.sqrt((t + 273) / 298) - 0.18,
    "iso-1585": lambda t, p, v: (99000 / (p - v)) ** 1.2 * ((t + 273) / 298) ** 0.6,
    "eec-80-1269": lambda t, p, v: 99000 / (p - v) * math.sqrt((t + 273) / 298),
    "din-70020": lambda t, p, v: 101300 / p * math.sqrt((t + 273) / 293),
    "sae-j607": lambda t, p, v: 29.92 * 3386.389 / (p - v) * math.sqrt((1.8 * t + 32 + 460) / 520),
}


def airs(elevation):
    p = standard_pressure(elevation)
    return [(5, 1.025 * p, 500), (35, 0.975 * p, 2800), (25, 100000, 1000)]


def standards(before, after, elevation):
    if before is not None and before == after:
        return 0.0
    gains = [FACTORS[a](*air) / FACTORS[b](*air) - 1 for air in airs(elevation) for a in FACTORS for b in FACTORS
             if a != b and before in (None, b) and after in (None, a)]
    return max(0.0, max(gains))


def barometer(correction, elevation):
    factor = FACTORS[correction]
    return factor(25, standard_pressure(elevation), 1000) / factor(25, standard_pressure(0), 1000) - 1


def weather(elevation):
    dense, thin, _ = airs(elevation)
    return FACTORS["sae-j1349"](*thin) / FACTORS["sae-j1349"](*dense) - 1


# ---- the rules ----

def printed(text):
    number, unit = re.match(r"\s*([-\d.]+)\s*(.*)", text).groups()
    return float(number), 0.5 * 10 ** -(len(number.split(".")[1]) if "." in number else 0), unit


def said(procedure, item):
    value = procedure.get(item)
    return None if value in (None, "", "not disclosed") else value


class Publication:
    def __init__(self, folder, name):
        with open(os.path.join(folder, name + ".json"), encoding="utf-8") as file:
            self.file = json.load(file)
        self.name, self.folder = name, folder
        self.procedure = self.file.get("procedure", {})

    def get(self, item):
        return said(self.procedure, item)

    def critical(self):
        sweep = 4000.0
        curves = self.file.get("curves", [])
        if curves:
            sweep = max(self.shared(pair) for pair in curves)
        elif self.get("sweepFrom"):
            sweep = printed(self.get("sweepTo"))[0] - printed(self.get("sweepFrom"))[0]
        return optimize.brentq(lambda c: 2 * stats.norm.sf(c) + sweep / (math.pi * 100) * math.exp(-c * c / 2) - 0.05, 1, 9, xtol=1e-13)

    def shared(self, pair):
        ends = []
        for side in ("before", "after"):
            with open(os.path.join(self.folder, pair[side]["file"]), encoding="utf-8") as file:
                speeds = [float(row[0]) for row in list(csv.reader(file))[1:]]
            ends.append((min(speeds), max(speeds)))
        return min(high for _, high in ends) - max(low for low, _ in ends)

    def scatter(self, level, least, few):
        """Shares and degrees of freedom: what is stated takes the place of what is assumed."""
        shares, freedom = list(least), [INF, INF, INF]
        for k, layer in enumerate(("pull", "refit", "day")):
            stated = self.procedure.get("scatter", {}).get(layer)
            if stated:
                value, _, unit = printed(stated["deviation"])
                shares[k] = value / 100 if unit == "%" else value / level
                freedom[k] = float(stated.get("degreesOfFreedom", few))
        return shares, freedom

    def quote(self, side, kind, pulls):
        """What is quoted of the pulls: as it was said, otherwise as given."""
        known = self.get("quoted" + side) or kind
        number = self.get("pulls" + side)
        return known, int(number) if number else (1 if known == "single" else pulls)

    def ordinary_quotes(self):
        usual = lambda side: 3 if self.get("quoted" + side) in ("mean", "best") else 1
        return [self.quote(side, "mean", usual(side)) for side in ("Before", "After")]

    def worst_quotes(self, near):
        kinds = (("mean", 1), ("best", 5)) if near else (("best", 5), ("mean", 1))
        quotes = []
        for side, (kind, pulls) in zip(("Before", "After"), kinds):
            known = self.get("quoted" + side) or kind
            quotes.append(self.quote(side, kind, pulls if known == kind else 1))
        return quotes

    def order(self):
        means = self.get("quotedBefore") == "mean" and self.get("quotedAfter") == "mean"
        return self.get("order") if means else None

    def refits(self, order):
        return 1 / order.count("A") + 1 / order.count("B") if order else 2.0

    def days(self):
        """Orders of these publications keep to one day or are two letters, so that what is said of the day counts."""
        return {None: None, "same": 0.0, "different": 2.0}[self.get("day")]

    def elevation(self):
        return printed(self.get("elevation"))[0] if self.get("elevation") else 300.0

    def barometers_differ(self):
        return {self.get("barometerBefore"), self.get("barometerAfter")} == {"sea-level", "station"}

    def barometer(self):
        before, after = self.get("barometerBefore"), self.get("barometerAfter")
        if before not in (None, "sea-level") or after not in (None, "station"):
            return 0.0
        if self.get("rig") == "same" and self.get("day") == "same" and not self.barometers_differ():
            return 0.0
        return max(0.0, barometer(self.get("correctionAfter") or self.get("correctionBefore") or "sae-j1349", self.elevation()))

    def shift(self):
        before, after = self.get("correctionBefore"), self.get("correctionAfter")
        mixed = standards(before, after, self.elevation())
        uncorrected = before in (None, "none") and after in (None, "none") and self.days() != 0
        air = weather(self.elevation()) if uncorrected else 0.0
        return (1 + (0 if self.get("rig") else 0.10)) * (1 + max(mixed, air)) * (1 + self.barometer()) - 1

    def ordinary(self, d, level, half, quotes, scatter, order):
        refits = self.refits(order) if self.get("strapDown") == "different" else 0.0
        shift = self.barometer() if self.barometers_differ() else 0.0
        critical = self.critical() if self.get("namedBefore") == "no" else Z
        return Difference(d, level, half, quotes, *scatter, refits, self.days() or 0.0, shift, critical)

    def worst(self, d, level, half, quotes, scatter, order):
        days = 2.0 if self.days() is None else self.days()
        critical = Z if self.get("namedBefore") == "yes" else self.critical()
        return Difference(d, level, half, quotes, *scatter, self.refits(order), days, self.shift(), critical)


def rows(publication):
    for figure in publication.file["figures"]:
        (before, half_b, unit), (after, half_a, _) = printed(figure["before"]), printed(figure["after"])
        half = math.sqrt((half_b ** 2 + half_a ** 2) / 2)
        name, d = figure["name"], after - before
        engine = unit in ("hp", "kW", "N·m", "lbf·ft")
        values = figure.get("values")
        pulls = values and values["each"] not in ("install", "specimen") and by_pulls(values)
        if engine:
            quotes, order = (pulls[0], None) if pulls else (publication.ordinary_quotes(), publication.order())
            scattering = pulls[1] if pulls else lambda shares, few: publication.scatter(before, shares, few)
            by = {key: publication.ordinary(d, before, half, quotes, scattering(shares, few), order)
                  for key, shares, few in (("chanceAlone", USUAL, INF), ("chanceLeast", LEAST, INF), ("chanceMost", MOST, 4))}
            for key, difference in by.items():
                yield name, key, difference.chance()
            usual = by["chanceAlone"]
            yield name, "tippingPullScatter", usual.tipping(scattering(USUAL, INF)[0][0])
            if usual.df > 2:
                wrong, times = usual.errors()
                yield name, "wrongSign", wrong
                yield name, "exaggeration", times
            yield name, "pickedBest", usual.dist.mean()
        if values:
            one, other = ([printed(text)[0] for text in values[side]] for side in ("before", "after"))
            test = stats.ttest_rel(other, one) if values["paired"] == "yes" else stats.ttest_ind(other, one, equal_var=False)
            yield name, "t", float(test.statistic)
            yield name, "pValue", float(test.pvalue)
            if values["each"] == "pull":
                level, d, half = float(np.mean(one)), float(np.mean(other) - np.mean(one)), half_b
                quotes, scatter = pulls
                yield from ends(name, publication.ordinary(d, level, half, quotes, scatter(USUAL, INF), None),
                                publication.worst(d, level, half, quotes, scatter(MOST, INF), None),
                                publication.worst(d, level, half, quotes, scatter(MOST, INF), None))
            else:
                ci = test.confidence_interval(0.95)
                for key in ("ordinary", "worst"):
                    yield name, key + "Low", float(ci.low)
                    yield name, key + "High", float(ci.high)
        elif engine and any(claim["figure"] == name for claim in publication.file["claims"]):
            most = publication.scatter(before, MOST, 4)
            yield from ends(name, usual, publication.worst(d, before, half, publication.worst_quotes(True), most, order),
                            publication.worst(d, before, half, publication.worst_quotes(False), most, order))


def by_pulls(values):
    """Pulls one by one: the mean of each side, and their own pooled scatter in place of the pulls'."""
    one, other = ([printed(text)[0] for text in values[side]] for side in ("before", "after"))
    freedom = len(one) + len(other) - 2
    pooled = math.sqrt((np.var(one, ddof=1) * (len(one) - 1) + np.var(other, ddof=1) * (len(other) - 1)) / freedom)
    return ([("mean", len(one)), ("mean", len(other))],
            lambda shares, few: ([pooled / float(np.mean(one)), shares[1], shares[2]], [freedom, INF, INF]))


def ends(name, ordinary, near, far):
    low, high = ordinary.interval()
    yield name, "ordinaryLow", low
    yield name, "ordinaryHigh", high
    yield name, "worstLow", near.interval()[0]
    yield name, "worstHigh", far.interval()[1]


print("publication,figure,what,value")
for folder, name in ((DEMO, "silent"), (DEMO, "sound"), (DEMO, "inlet"), (DEMO, "battery-trial-1953"),
                     (HERE, "single-other-day"), (HERE, "best-of-three"), (HERE, "values-per-pull")):
    for figure, what, value in rows(Publication(folder, name)):
        print(f"{name},{figure},{what},{value:.12g}")
