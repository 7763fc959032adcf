import { useId, useState } from "react";
import { announce, Button, Dialog } from "../../parts/index.ts";
import { keep, kept } from "../../session/index.ts";
import { useDictation, whyNotHeard } from "../../voice/index.ts";

interface SpeakButtonProps {
  /** Which note: "nose". */
  readonly what: string;
  readonly onHeard: (text: string) => void;
}

const AGREED = "voice.agreed";
const WHY_NOT = {
  "no secure page":
    "Speaking needs HTTPS. This page came over plain HTTP, where browsers give no page the microphone. Typing and words work.",
  "no recognition": "This browser has no speech recognition. The microphone on the phone’s own keyboard may.",
} as const;

/** Speaks a note where the browser can; where it cannot, the button says why. Asked once before the first time. */
export function SpeakButton({ what, onHeard }: SpeakButtonProps) {
  const id = useId();
  const [asking, setAsking] = useState(false);
  const [told, setTold] = useState(false);
  const dictation = useDictation(onHeard);
  const why = whyNotHeard();
  const press = (): void => {
    if (why !== null) setTold(true);
    else if (dictation.listening) dictation.stop();
    else if (kept(AGREED) === null) setAsking(true);
    else dictation.start();
  };
  const agree = (): void => {
    keep(AGREED, "yes");
    setAsking(false);
    dictation.start();
    announce("Listening");
  };
  return (
    <>
      <Button
        kind="quiet"
        className={dictation.listening ? "speak-on" : why === null ? "" : "speak-not"}
        aria-describedby={`${id}-why`}
        onClick={press}
      >
        {dictation.listening ? "● Stop listening" : "Speak"}
        <span className="unseen"> the {what}</span>
      </Button>
      <p className="note-said" id={`${id}-why`} role="status">
        {told && why !== null ? WHY_NOT[why] : null}
        {dictation.failed}
        {dictation.sofar !== "" && <span className="speak-sofar">{dictation.sofar} …</span>}
      </p>
      <Dialog title="Speak your notes?" open={asking} onClose={() => setAsking(false)}>
        <p>
          Your browser turns speech into text.{" "}
          <strong>Some browsers send what they hear to a server of their maker for that</strong>, and others
          at the table may be heard too. This app sends speech nowhere itself; the words that come back go
          into the note like typed ones.
        </p>
        <p>You can always type instead. Asked once on this device.</p>
        <div className="form-actions">
          <Button kind="main" onClick={agree}>
            Listen
          </Button>
          <Button onClick={() => setAsking(false)}>Rather not</Button>
        </div>
      </Dialog>
    </>
  );
}
