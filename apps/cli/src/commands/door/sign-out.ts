import { yes } from "../../flags/index.ts";
import { houseCommand } from "../command.ts";
import { needHouse } from "./need-house.ts";

export const doorSignOut = houseCommand({
  name: "door sign-out",
  says: "Ends the owner's session with a house over the network, and forgets it here.",
  flags: { everywhere: yes("every session of the owner, on every device") },
  example: "door sign-out --house http://192.168.1.7:4480",
  run: async (given, { client }) => {
    const house = needHouse(given.flags);
    const everywhere = given.flags.everywhere;
    await client(everywhere ? "signOutEverywhere" : "signOut");
    return {
      json: { house: house.origin, signedIn: false, everywhere },
      text: () =>
        everywhere ? `Signed out of ${house.origin} everywhere.` : `Signed out of ${house.origin}.`,
    };
  },
});
