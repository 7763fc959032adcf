# Makes rankings.oracle.json: python3 rankings.oracle.py > rankings.oracle.json  (numpy 2.4.6, scipy 1.17.1)
# Likelihoods written out by going through every subset that could be picked; maxima by BFGS, polished by Newton steps on
# numerical second derivatives. Made-up data, seeded.
import json, random, itertools, math
import numpy as np
from scipy.optimize import minimize
rng = random.Random(66)

def loglik(par, rankings, k, sizes):
    th = np.concatenate([[0], par[:k - 1]]); ld = dict(zip(sizes, par[k - 1:])); ld[1] = 0.
    total = 0.
    for r in rankings:
        left = [i for g in r for i in g]
        for g in r:
            if len(left) > 1:
                terms = [ld[s] + sum(th[i] for i in T) / s for s in [1] + sizes if s <= len(left) for T in itertools.combinations(left, s)]
                m = max(terms)
                total += ld[len(g)] + sum(th[i] for i in g) / len(g) - m - math.log(sum(math.exp(t - m) for t in terms))
            left = [i for i in left if i not in g]
    return total

def fit(f, n):
    g = lambda x: np.array([(f(x + e) - f(x - e)) / 2e-5 for e in np.eye(n) * 1e-5])
    r = minimize(lambda x: -f(x), np.zeros(n), jac=lambda x: -g(x), method="BFGS", options={"gtol": 1e-7, "maxiter": 2000})
    x = r.x
    for _ in range(6):
        h = 1e-4; E = np.eye(n) * h
        H = np.array([[(f(x + a + b) - f(x + a - b) - f(x - a + b) + f(x - a - b)) / (4 * h * h) for b in E] for a in E])
        step = np.linalg.solve(H, g(x)); x = x - step
        if abs(step).max() < 1e-10: break
    return x, -np.linalg.inv(H)

cases = []
for k, n, tie, part in ((3, 8, .4, 0), (4, 9, .3, .3), (5, 12, .35, .3), (4, 10, 0, .4), (4, 8, .7, 0)):
    rk = []
    for _ in range(n):
        items = list(range(k)); rng.shuffle(items)
        items.sort(key=lambda i: i * .4 + rng.random() * 2)
        while len(items) > 2 and rng.random() < part: items.pop(rng.randrange(len(items)))
        groups = [[items[0]]]
        for i in items[1:]:
            if rng.random() < tie: groups[-1].append(i)
            else: groups.append([i])
        rk.append(groups)
    sizes = sorted({len(g) for r in rk for g in r if len(g) > 1})
    x, cov = fit(lambda p: loglik(p, rk, k, sizes), k - 1 + len(sizes))
    if abs(x).max() > 12: continue
    cases.append({"items": k, "rankings": rk, "logWorth": [0, *x[:k - 1]], "standardError": [0, *np.sqrt(np.diag(cov))[:k - 1]],
                  "ties": [[s, math.exp(v)] for s, v in zip(sizes, x[k - 1:])], "logLikelihood": loglik(x, rk, k, sizes)})
# Pairs with ties and with the order of serving (Davidson and Beaver).
k = 4; served = []
for i in range(k):
    for j in range(k):
        if i != j: served.append([i, j, rng.randint(1, 9), rng.randint(1, 7), rng.randint(0, 4)])
def dav(par):
    th = np.concatenate([[0], par[:3]]); g, ln = par[3], par[4]; t = 0
    for i, j, a, b, c in served:
        p1, p2, p0 = math.exp(th[i] + g / 2), math.exp(th[j] - g / 2), math.exp(ln + (th[i] + th[j]) / 2)
        z = p1 + p2 + p0; t += a * math.log(p1 / z) + b * math.log(p2 / z) + (c * math.log(p0 / z) if c else 0)
    return t
x, cov = fit(dav, 5)
pairs = {"served": served, "logWorth": [0, *x[:3]], "standardError": [0, *np.sqrt(np.diag(cov))[:3]], "first": x[3], "firstError": float(np.sqrt(cov[3, 3])), "nu": math.exp(x[4]), "logLikelihood": dav(x)}
print(json.dumps({"rankings": cases, "pairs": pairs}, indent=0, default=float))
