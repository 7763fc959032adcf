# Makes correspondence.oracle.json: python3 correspondence.oracle.py > correspondence.oracle.json  (numpy 2.4.6; made-up counts, seeded)
import json
import numpy as np
rng = np.random.default_rng(7)
tables = [np.array([[4, 2, 3, 2], [4, 3, 7, 4], [25, 10, 12, 4], [18, 24, 33, 13], [10, 6, 7, 2]])]
tables += [rng.integers(1, 25, (r, c)) for r, c in ((3, 3), (6, 4), (4, 9), (12, 12))]
out = []
for N in tables:
    P = N / N.sum(); r = P.sum(1); c = P.sum(0)
    S = (P - np.outer(r, c)) / np.sqrt(np.outer(r, c)); u, s, vt = np.linalg.svd(S, full_matrices=False)
    k = min(N.shape) - 1
    out.append({"counts": N.tolist(), "inertia": (s[:k] ** 2).tolist(), "absRows": np.abs(u[:, :2] * s[:2] / np.sqrt(r)[:, None]).tolist(), "absColumns": np.abs(vt[:2].T / np.sqrt(c)[:, None]).tolist()})
print(json.dumps(out, indent=0))
