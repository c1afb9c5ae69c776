// Starts the counter, as boot.js starts the app.

import start from "./loopwright-bare.js";

start({ module_or_path: self.program });
