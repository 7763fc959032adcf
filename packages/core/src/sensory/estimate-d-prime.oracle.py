# Makes estimate-d-prime.oracle.json: python3 estimate-d-prime.oracle.py > estimate-d-prime.oracle.json
# scipy 1.17.1: psychometric functions by quad, roots by brentq, likelihood straight in d', binomial tails of scipy.stats.
import json
from math import sqrt, log, inf
from scipy import stats
from scipy.integrate import quad
from scipy.optimize import brentq
N = stats.norm
Q = lambda f, a, b: quad(f, a, b, epsabs=1e-13, epsrel=1e-13, limit=400)[0]
PC = {
 "two_afc": lambda d: N.cdf(d / sqrt(2)),
 "three_afc": lambda d: Q(lambda z: N.pdf(z - d) * N.cdf(z) ** 2, d - 9, d + 9),
 "duo_trio": lambda d: 1 - N.cdf(d / sqrt(2)) - N.cdf(d / sqrt(6)) + 2 * N.cdf(d / sqrt(2)) * N.cdf(d / sqrt(6)),
 "triangle": lambda d: 2 * Q(lambda z: (N.cdf(-z * sqrt(3) + d * sqrt(2 / 3)) + N.cdf(-z * sqrt(3) - d * sqrt(2 / 3))) * N.pdf(z), 0, 9),
 "tetrad": lambda d: 1 - 2 * Q(lambda z: N.pdf(z) * (2 * N.cdf(z) * N.cdf(z - d) - N.cdf(z - d) ** 2), -9, 9),
}
G = {"two_afc": .5, "three_afc": 1 / 3, "duo_trio": .5, "triangle": 1 / 3, "tetrad": 1 / 3}
def ll(k, n, p): return (k * log(p) if k else 0) + ((n - k) * log(1 - p) if n > k else 0)
out = []
for t in PC:
    for k, n in ((10, 15), (4, 12), (9, 9), (20, 24)):
        for level in (.9, .95):
            p = k / n; d = 0 if p <= G[t] else inf if k == n else brentq(lambda x: PC[t](x) - p, 0, 15, xtol=1e-13)
            top = ll(k, n, max(G[t], p)); cut = top - stats.chi2.ppf(level, 1) / 2
            f = lambda x: ll(k, n, min(PC[t](x), 1 - 1e-15) if x else G[t]) - cut
            lo = 0 if f(0) >= 0 else brentq(f, 0, min(d, 12), xtol=1e-13)
            hi = None if k == n else brentq(f, d, 12, xtol=1e-13)
            out.append({"test": t, "right": k, "of": n, "level": level, "dPrime": None if d == inf else d, "low": lo, "high": hi})
power = []
for t, d, n, alpha in (("triangle", 1.5, 30, .05), ("tetrad", 1.5, 30, .05), ("duo_trio", 2, 24, .1), ("two_afc", .8, 40, .05), ("three_afc", 1, 15, .01)):
    crit = next(k for k in range(n + 2) if stats.binom.sf(k - 1, n, G[t]) <= alpha)
    power.append([t, d, n, alpha, crit, float(stats.binom.sf(crit - 1, n, PC[t](d)))])
like = []
for t, d, n, alpha in (("triangle", 1.5, 60, .05), ("tetrad", 1, 100, .05), ("two_afc", .8, 80, .1)):
    crit = max(k for k in range(n + 1) if stats.binom.cdf(k, n, PC[t](d)) <= alpha)
    like.append([t, d, n, alpha, crit, float(stats.binom.cdf(crit, n, G[t]))])
print(json.dumps({"estimates": out, "power": power, "likeness": like}, indent=0))
