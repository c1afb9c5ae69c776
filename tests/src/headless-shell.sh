#!/bin/sh
# Chromium's headless shell, with a page to begin with. On a profile of its own it opens none, and its driver waits for one.
# Not by way of Debian's script of the same name, which stays beside it: a scenario that ends the browser by force means this one.
exec /usr/lib/chromium/chromium-headless-shell "$@" about:blank
