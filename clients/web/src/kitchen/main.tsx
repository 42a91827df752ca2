import { render } from "preact";
import "../look/page.css";
import "../look/print.css";
import { Frame } from "../parts/Frame";

render(<Frame page="kitchen"><h1>Kitchen</h1><p>The kitchen works by the console for now: <code>swapsolver --help</code> lists what it does. Readers find the published loaves on <a href="/">their own page</a>.</p></Frame>, document.getElementById("page")!);
