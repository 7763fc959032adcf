import { useAsk } from "../../api.ts";
import { Broken, Busy, Page, Section } from "../../parts/index.ts";
import { PassphraseForm } from "./passphrase-form.tsx";
import { Secure } from "./secure.tsx";
import { SignIn } from "./sign-in.tsx";
import { SignOut } from "./sign-out.tsx";
import { Trail } from "./trail.tsx";
import "./door.css";

/** The house's own door: who may come in from the network, and what happened there. */
export default function Door() {
  const asked = useAsk("getDoor", {});
  if (asked.state !== "here") {
    return (
      <Page title="The door">
        {asked.state === "busy" ? (
          <Busy what="the door" />
        ) : (
          <Broken asked={asked} title="The door did not answer" />
        )}
      </Page>
    );
  }
  const door = asked.answer;
  if (door.you === "stranger") {
    return (
      <Page
        title="Sign in"
        lead="From the network the house opens to its owner, and to guests of a flight by their link or code."
      >
        <SignIn passphraseSet={door.passphraseSet} />
      </Page>
    );
  }
  return (
    <Page
      title="The door"
      lead={
        door.you === "here"
          ? "You are on the house’s own machine, where nobody is asked."
          : "You are signed in as the owner."
      }
    >
      <Section
        title={
          door.passphraseSet ? "Another passphrase" : "A passphrase, before the house listens to a network"
        }
      >
        <PassphraseForm door={door} />
      </Section>
      <Section title="Signed in">
        <SignOut here={door.you === "here"} />
      </Section>
      <Section title="The network">
        <Secure />
      </Section>
      <Section title="What happened here">
        <Trail />
      </Section>
    </Page>
  );
}
