import { render } from "preact";
import "../look/page.css";
import "../look/print.css";
import { Reader } from "./Reader";

render(<Reader />, document.getElementById("page")!);
