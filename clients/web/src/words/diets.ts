// Ways of eating that a variant can be asked for.
import { VaryFormulaRequest_Diet } from "contract/substitution_service_pb";

export const diets = [
  { id: "vegetarian", words: "vegetarian", diet: VaryFormulaRequest_Diet.VEGETARIAN },
  { id: "vegan", words: "vegan", diet: VaryFormulaRequest_Diet.VEGAN },
  { id: "dairy-free", words: "dairy-free", diet: VaryFormulaRequest_Diet.DAIRY_FREE },
] as const;
