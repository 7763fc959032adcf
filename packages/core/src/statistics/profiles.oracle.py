# Makes profiles.oracle.json: python3 profiles.oracle.py > profiles.oracle.json  (numpy 2.4.6, scipy 1.17.1; made-up data, seeded)
import json, itertools
import numpy as np
from scipy import stats
rng = np.random.default_rng(4)
out = {}
eig = []
for n in (2, 3, 5, 9):
    m = rng.normal(size=(n, n)); m = np.round(m + m.T, 3); w, v = np.linalg.eigh(m)
    eig.append({"matrix": m.tolist(), "values": w[::-1].tolist(), "vectors": v[:, ::-1].T.tolist()})
out["eigen"] = eig
X = np.round(rng.normal(size=(7, 4)) * [3, 1, 2, .5], 2)
c = X - X.mean(0); u, s, vt = np.linalg.svd(c, full_matrices=False)
out["pca"] = {"table": X.tolist(), "variances": (s ** 2 / 6).tolist(), "shares": (s ** 2 / (s ** 2).sum()).tolist(), "absScores": np.abs(u * s).tolist()}
A = np.round(rng.normal(size=(6, 3)), 2); B = np.round(A @ rng.normal(size=(3, 2)) + rng.normal(size=(6, 2)) * 1.5, 2)
def rv(a, b):
    a = a - a.mean(0); b = b - b.mean(0); w, v = a @ a.T, b @ b.T
    return np.trace(w @ v) / np.sqrt(np.trace(w @ w) * np.trace(v @ v))
perms = [rv(A, B[list(p)]) for p in itertools.permutations(range(6))]
out["rv"] = {"one": A.tolist(), "other": B.tolist(), "rv": rv(A, B), "byChance": float(np.mean(perms)), "p": float(np.mean(np.array(perms) >= rv(A, B) - 1e-12))}
d = [1.2, -.4, 2.1, .8, .3, 1.9, -.7]
r = stats.permutation_test((d,), np.mean, permutation_type="samples", n_resamples=np.inf)
out["flips"] = {"differences": d, "p": float(r.pvalue)}
x = [6.1, 5.2, 7.3, 6.6, 4.9]
ci = stats.t.interval(.9, 4, np.mean(x), stats.sem(x)); out["mean"] = {"values": x, "level": .9, "low": ci[0], "high": ci[1]}
print(json.dumps(out, indent=0))
