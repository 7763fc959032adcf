# Makes laws.oracle.json: python3 laws.oracle.py > laws.oracle.json  (mpmath 1.3.0 at 40 digits, scipy 1.17.1)
import json, random
from mpmath import mp, mpf, betainc, ncdf
from scipy import stats
mp.dps = 40
rng = random.Random(6)
def f(x): return float(x)
beta = []
for _ in range(120):
    a = rng.choice([0.5, 1, 2, 3.5, 10, 40, 150, 700, 2000]); b = rng.choice([0.5, 1, 2, 5, 12, 60, 300, 2000])
    mean = a / (a + b); sd = (a * b / ((a + b) ** 2 * (a + b + 1))) ** .5
    x = min(max(mean + rng.uniform(-6, 6) * sd, 1e-6), 1 - 1e-6)
    low = betainc(a, b, 0, mpf(x), regularized=True)
    beta.append([x, a, b, f(low), f(1 - low)])
normal = [[x, f(ncdf(mpf(x)))] for x in (-30, -8, -3.3, -1, -.01, 0, .5, 1.959963984540054, 4, 7)]
fq = [[p, a, b, float(stats.f.ppf(p, a, b))] for p in (.025, .05, .5, .95, .975) for a, b in ((5, 18), (5, 15), (1, 3), (15, 5), (2, 60))]
t = [[l, df, float(stats.t.ppf((1 + l) / 2, df))] for l in (.5, .9, .95, .99) for df in (1, 2, 5, 11, 40)]
binom = []
for _ in range(60):
    n = rng.randint(1, 400); p = rng.uniform(.02, .98); k = rng.randint(0, n)
    lo = sum(mp.binomial(n, i) * mpf(p) ** i * (1 - mpf(p)) ** (n - i) for i in range(k + 1))
    hi = sum(mp.binomial(n, i) * mpf(p) ** i * (1 - mpf(p)) ** (n - i) for i in range(k, n + 1))
    if lo > 1e-250 and hi > 1e-250: binom.append([n, k, p, f(lo), f(hi)])
cp = []
for k, n in ((0, 10), (1, 7), (10, 15), (5, 5), (31, 66)):
    for level in (.9, .95, .99):
        ci = stats.binomtest(k, n).proportion_ci(level, "exact"); cp.append([k, n, level, float(ci.low), float(ci.high)])
print(json.dumps({"beta": beta, "normal": normal, "f": fq, "t": t, "binomial": binom, "clopperPearson": cp}))
