// Takes an answer away: by link, or on paper.
import { useState } from "preact/hooks";

export function ShareBar() {
  const [said, setSaid] = useState("");
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(location.href);
      setSaid("The link is copied: whoever opens it sees this question and its answer.");
    } catch {
      setSaid(`Copy this link: ${location.href}`);
    }
  };
  return (
    <p class="share">
      <button type="button" onClick={() => void copy()}>
        Copy the link
      </button>{" "}
      <button type="button" onClick={() => print()}>
        Print
      </button>{" "}
      <span role="status">{said}</span>
    </p>
  );
}
