import start from "./loopwright-bare.js";

start();
