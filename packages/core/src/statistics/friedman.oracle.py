"""Oracle for friedman.oracle.json: scipy's statistic and chi-square p, chi-square tails by mpmath to 40 digits, and an exact permutation p counted by
going through every arrangement of every row with whole numbers. Run: python3 friedman.oracle.py > friedman.oracle.json
"""
import itertools
import json
import random
from fractions import Fraction
import scipy
from mpmath import gammainc, mp
from scipy.stats import friedmanchisquare, rankdata

mp.dps = 40

random.seed(7919)


def exact(table):
    rows = [[int(2 * r) for r in rankdata(row)] for row in table]
    k, n = len(rows[0]), len(rows)
    mean = n * (k + 1)
    stat = lambda chosen: sum((sum(c) - mean) ** 2 for c in zip(*chosen))
    seen = stat(rows)
    # Rows permute independently and the statistic ignores column order: the first row may stand still.
    orders = [[rows[0]]] + [list(itertools.permutations(r)) for r in rows[1:]]
    hits = total = 0
    for chosen in itertools.product(*orders):
        total += 1
        hits += stat(chosen) >= seen
    return Fraction(hits, total)


cases = []
shapes = [(3, 2), (3, 3), (3, 4), (3, 5), (3, 6), (4, 2), (4, 3), (4, 4), (5, 2), (5, 3), (6, 2), (7, 2)]
for items, judges in shapes:
    for levels in (3, 100):  # 3 levels: many ties; 100: few or none
        table = [[random.randrange(levels) for _ in range(items)] for _ in range(judges)]
        if all(len(set(row)) == 1 for row in table):
            continue
        stat, p = friedmanchisquare(*zip(*table))
        f = exact(table)
        cases.append({"table": table, "statistic": stat, "pChiSquare": p,
                      "pExact": [f.numerator, f.denominator]})
tails = [[x, df, float(gammainc(mp.mpf(df) / 2, mp.mpf(x) / 2, regularized=True))] for df in (1, 2, 3, 4, 5, 7, 11, 20, 50)
         for x in (0.0, 0.1, 1.0, 3.5, 10.0, 41.1, 120.0, 400.0)]
print(json.dumps({"generator": f"friedman.oracle.py, scipy {scipy.__version__}, seed 7919",
                  "cases": cases, "chiSquareTails": tails}))
