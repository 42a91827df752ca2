// A field with its label, its unit and what is wrong with it.
import type { ComponentChildren } from "preact";

interface FieldProps {
  id: string;
  label: string;
  unit?: string;
  hint?: string;
  wrong?: string | undefined;
}

export function TextField(props: FieldProps & { value: string; onValue: (value: string) => void; numeric?: boolean; isSecret?: boolean; isHidden?: boolean; required?: boolean }) {
  return (
    <Labelled {...props}>
      <input
        id={props.id}
        name={props.id}
        type={(props.isSecret ? "password" : "text") as "text"}
        inputMode={props.numeric ? "decimal" : undefined}
        autocomplete="off"
        value={props.value}
        required={props.required}
        aria-invalid={props.wrong ? true : undefined}
        aria-describedby={props.wrong ? `${props.id}-wrong` : props.hint ? `${props.id}-hint` : undefined}
        onInput={(event) => props.onValue(event.currentTarget.value)}
      />
    </Labelled>
  );
}

export function Choice<T extends string>(props: FieldProps & { value: T; onValue: (value: T) => void; children: ComponentChildren }) {
  return (
    <Labelled {...props}>
      <select
        id={props.id}
        value={props.value}
        aria-describedby={props.wrong ? `${props.id}-wrong` : props.hint ? `${props.id}-hint` : undefined}
        onChange={(event) => props.onValue(event.currentTarget.value as T)}
      >
        {props.children}
      </select>
    </Labelled>
  );
}

function Labelled(props: FieldProps & { isHidden?: boolean; children: ComponentChildren }) {
  return (
    <div class="field">
      <label for={props.id} class={props.isHidden ? "unseen" : undefined}>
        {props.label}
        {props.unit && <span class="unit"> [{props.unit}]</span>}
      </label>
      {props.children}
      {props.hint && !props.wrong && (
        <small id={`${props.id}-hint`} class="hint">
          {props.hint}
        </small>
      )}
      {props.wrong && (
        <small id={`${props.id}-wrong`} class="wrong">
          {props.wrong}
        </small>
      )}
    </div>
  );
}
