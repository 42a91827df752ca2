// Picks an ingredient, those of the same role first.
import type { Ingredient } from "contract/ingredient_pb";
import { Choice } from "./Field";

const roles: Record<string, string> = {
  flour: "Flours and seeds",
  gel: "Gels and fibres",
  egg: "Eggs",
  liquid: "Liquids",
  fat: "Fats",
  acid: "Acids",
  base: "Bases",
  "leavening-blend": "Baking powders",
  sweetener: "Sweeteners",
  salt: "Salt",
  flavour: "Flavours",
  yeast: "Yeast",
};

export function IngredientChoice(props: {
  id: string;
  label: string;
  pantry: readonly Ingredient[];
  first?: string | undefined;
  value: string;
  onValue: (value: string) => void;
  none: string;
  hint?: string;
}) {
  const order = Object.keys(roles).sort((one, other) => Number(other === props.first) - Number(one === props.first));
  return (
    <Choice id={props.id} label={props.label} value={props.value} onValue={props.onValue} {...(props.hint ? { hint: props.hint } : {})}>
      <option value="">{props.none}</option>
      {order.map((role) => (
        <optgroup key={role} label={roles[role]!}>
          {props.pantry
            .filter((one) => one.role === role)
            .map((one) => (
              <option key={one.name} value={one.name}>
                {one.displayName}
              </option>
            ))}
        </optgroup>
      ))}
    </Choice>
  );
}
