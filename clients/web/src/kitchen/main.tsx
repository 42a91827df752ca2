import { render } from "preact";
import { enterKitchen } from "../asking/key";
import "../look/page.css";
import "../look/kitchen.css";
import "../look/print.css";
import { Kitchen } from "./Kitchen";

enterKitchen();
render(<Kitchen />, document.getElementById("page")!);
