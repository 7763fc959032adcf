# Makes confidence.oracle.json: python3 confidence.oracle.py > confidence.oracle.json
# scipy 1.17.1: tails by scipy.stats.poisson_binom; sums of marked values by going through every choice, in fractions.
import json
from fractions import Fraction
from itertools import combinations, product
import numpy as np
from scipy.stats import poisson_binom
rng = np.random.default_rng(20260706)
out = {"chances": [], "sums": []}
for n in (1, 4, 12, 40, 200):
    for _ in range(3):
        chances = [float(x) for x in rng.integers(0, 101, n) / 100]
        right = [bool(x) for x in rng.random(n) < 0.5]
        k = sum(right); law = poisson_binom(chances)
        out["chances"].append({"chances": chances, "right": right, "lower": float(law.cdf(k)), "upper": float(law.sf(k - 1))})
for groups in (1, 2, 3):
    for _ in range(4):
        made = []
        for _ in range(groups):
            n = int(rng.integers(1, 7)); values = [int(x) for x in rng.choice([10, 30, 50, 70, 90, 95], n)]
            made.append({"values": values, "marked": [bool(x) for x in rng.random(n) < 0.5]})
        own = sum(v for g in made for v, m in zip(g["values"], g["marked"]) if m)
        sums = [sum(c) for c in product(*[[sum(x) for x in combinations(g["values"], sum(g["marked"]))] for g in made])]
        out["sums"].append({"groups": made, "p": float(Fraction(sum(s >= own for s in sums), len(sums))),
            "leastP": float(Fraction(sum(s == max(sums) for s in sums), len(sums)))})
print(json.dumps(out))
