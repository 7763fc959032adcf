import { one, readToken } from "../../flags/index.ts";

/** A token on the command line can be seen by whoever lists the processes of this machine; the variable cannot. */
export const tokenFlag = (whose: string) => ({
  token: one(
    readToken,
    "<token>",
    `${whose}; better in PARTSPROOF_TOKEN, where others do not see it`,
    "PARTSPROOF_TOKEN",
  ),
});

export const withToken = (token: string | undefined): { readonly token?: string } =>
  token === undefined ? {} : { token };
