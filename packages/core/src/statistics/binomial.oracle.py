"""The rows "needed" of binomial.oracle.json: exact binomial power by rational arithmetic, independent of the program.

Usage: python3 binomial.oracle.py   (prints the rows; about a minute)
"""
import json
from fractions import Fraction as F
from math import comb


def tail(n, k, p):
    return sum(comb(n, i) * p**i * (1 - p) ** (n - i) for i in range(max(k, 0), n + 1))


def critical(n, p, alpha):
    return next((k for k in range(n + 1) if tail(n, k, p) <= alpha), None)


rows = []
alpha = F(5, 100)
for p0 in (F(1, 3), F(1, 2)):
    for share in (50, 40, 30):
        p1 = p0 + (1 - p0) * F(share, 100)
        power = [F(0)]
        for n in range(1, 190):
            k = critical(n, p0, alpha)
            power.append(F(0) if k is None else tail(n, k, p1))
        for beta in (F(2, 10), F(1, 10), F(5, 100)):
            smallest = min(n for n in range(1, 190) if power[n] >= 1 - beta)
            stable = max(n for n in range(1, 190) if power[n] < 1 - beta) + 1
            ends = [smallest, critical(smallest, p0, alpha), stable, critical(stable, p0, alpha)]
            chances = [[p.numerator, p.denominator] for p in (p0, p1)]
            rows.append([*chances, float(beta), *ends, float(power[smallest])])
print(json.dumps(rows))
