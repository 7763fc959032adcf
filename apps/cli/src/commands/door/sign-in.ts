import { readHidden } from "@partsproof/server/read-hidden";
import { houseCommand } from "../command.ts";
import { needHouse } from "./need-house.ts";

export const doorSignIn = houseCommand({
  name: "door sign-in",
  says: "Signs the owner in to a house over the network; the passphrase is read from the terminal, unseen, or from standard input.",
  flags: {},
  example: "door sign-in --house http://192.168.1.7:4480",
  run: async (given, { client }) => {
    const house = needHouse(given.flags);
    const passphrase = await readHidden(`Owner's passphrase of ${house.origin} (it is not shown): `);
    await client("signIn", { body: { passphrase } });
    return {
      json: { house: house.origin, signedIn: true },
      text: () => `Signed in to ${house.origin}: 12 hours unused or 7 days end it, and \`door sign-out\`.`,
      notes:
        house.protocol === "https:"
          ? []
          : ["Over plain HTTP whoever is on the same network can read the passphrase and all that follows."],
    };
  },
});
