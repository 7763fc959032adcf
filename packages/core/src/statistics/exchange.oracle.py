# Makes exchange.oracle.json: python3 exchange.oracle.py > exchange.oracle.json
# scipy 1.17.1: yes and no by scipy.stats.poisson_binom (Mantel and Haenszel's exact law, one row of one observation a table);
# counts by going through every choice of one of each group, in fractions; larger ones by numpy 2.4 convolution.
import json
from fractions import Fraction
from itertools import product
import numpy as np
from scipy.stats import poisson_binom
rng = np.random.default_rng(20260705)
out = {"yesNo": [], "counts": [], "large": []}
for groups in (3, 8, 20, 60):
    for _ in range(3):
        made = [[int(x) for x in rng.random(rng.integers(2, 7)) < 0.4] for _ in range(groups)]
        own = sum(g[0] for g in made)
        law = poisson_binom([sum(g) / len(g) for g in made])
        out["yesNo"].append({"groups": made, "lower": float(law.cdf(own)), "upper": float(law.sf(own - 1))})
for groups in (1, 2, 4, 6):
    for _ in range(3):
        made = [[int(x) for x in rng.integers(0, 6, rng.integers(2, 6))] for _ in range(groups)]
        own = sum(g[0] for g in made)
        sums = [sum(c) for c in product(*made)]
        out["counts"].append({"groups": made,
            "lower": float(Fraction(sum(s <= own for s in sums), len(sums))),
            "upper": float(Fraction(sum(s >= own for s in sums), len(sums))),
            "mean": float(Fraction(sum(sums), len(sums)))})
for groups in (100, 160):
    made = [[int(x) for x in rng.integers(0, 9, 5)] for _ in range(groups)]
    own = sum(g[0] for g in made)
    law = np.ones(1)
    for g in made: law = np.convolve(law, np.bincount(g) / len(g))
    out["large"].append({"groups": made, "lower": float(law[:own + 1].sum()), "upper": float(law[own:].sum())})
print(json.dumps(out))
