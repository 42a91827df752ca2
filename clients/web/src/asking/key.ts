// The kitchen's key, for as long as this tab is open. Only the kitchen page ever sets one.
const place = "swapsolver-key";
let isKitchen = false;

/** Lets this page show the key that was given in this tab. */
export function enterKitchen(): void {
  isKitchen = true;
}

export function keyOfThisTab(): string {
  return isKitchen ? (sessionStorage.getItem(place) ?? "") : "";
}

export function keepKey(key: string): void {
  sessionStorage.setItem(place, key);
}

export function forgetKey(): void {
  sessionStorage.removeItem(place);
}
