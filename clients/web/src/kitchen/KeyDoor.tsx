// The door: a key of this kitchen, kept for as long as the tab is open.
import { useState } from "preact/hooks";
import { keepKey, keyOfThisTab, forgetKey } from "../asking/key";
import { trials } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { TextField } from "../parts/Field";
import { useUsable } from "../parts/useUsable";
import { FaultNote, Waiting } from "../parts/Waiting";

export function KeyDoor({ enter }: { enter: () => void }) {
  const [key, setKey] = useState("");
  const asking = useAsking<void>();
  useUsable(true);
  const knock = async (signal: AbortSignal) => {
    keepKey(key.trim());
    try {
      // The least that only a holder of a key may ask.
      await trials.listLearnedFacts({ pageSize: 1 }, { signal });
      enter();
    } catch (reason) {
      forgetKey();
      throw reason;
    }
  };
  return (
    <form
      class="door"
      onSubmit={(event) => {
        event.preventDefault();
        void asking.ask(knock);
      }}
    >
      <h1>Kitchen</h1>
      <p class="lead">Formulas and trials of this kitchen are behind a key. It stays in this tab alone, and is forgotten when the tab closes.</p>
      <TextField id="key" label="Key" isSecret value={key} onValue={setKey} hint="made on the service's own machine with: swapsolver keys create" />
      <button type="submit" class="main" disabled={key.trim() === ""}>
        Enter
      </button>
      <Waiting asking={asking} what="Trying the key." />
      <FaultNote fault={asking.fault} again={asking.fault?.kind === "key" ? undefined : asking.again} />
    </form>
  );
}

export function hasKey(): boolean {
  return keyOfThisTab() !== "";
}
