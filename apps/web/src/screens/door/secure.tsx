/** What is missing on a plain-HTTP address, and what is not. */
export function Secure() {
  return globalThis.isSecureContext ? (
    <p>
      This address counts as secure in this browser. What travels over a plain-HTTP address of the home
      network, passphrase, tokens and notes, can be read by whoever is on that network.
    </p>
  ) : (
    <p>
      <strong>This address is plain HTTP.</strong> Whoever is on this network can read what travels:
      passphrase, tokens, notes. Sheets, codes and checking work all the same. The copy button needs HTTPS:
      give the house a certificate (docs/guide/at-the-table.md).
    </p>
  );
}
