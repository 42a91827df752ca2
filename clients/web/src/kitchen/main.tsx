import { render } from "preact";
import "../look/page.css";
import "../look/print.css";
import { Frame } from "../parts/Frame";

render(<Frame page="kitchen"><h1>Kitchen</h1></Frame>, document.getElementById("page")!);
