import type { Issue } from "@partsproof/house/protocol";
import type { Stocks } from "../../mixing/index.ts";

/** The house tells whiskeys and batches by their ids; a reader knows them by name. */
export function namedIssues(issues: readonly Issue[], stocks: Stocks): readonly Issue[] {
  return issues.map((issue) => ({
    ...issue,
    message: issue.message.replace(/[0-9a-hjkmnp-tv-z]{26}/g, (id) => {
      const label = stocks.get(`whiskey:${id}`)?.label ?? stocks.get(`batch:${id}`)?.label;
      return label ?? id;
    }),
  }));
}
