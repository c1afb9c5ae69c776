#!/bin/sh
# Chromium's headless shell, with a page to begin with. On a profile of its own it opens none, and its driver waits for one.
exec /usr/bin/chromium-headless-shell "$@" about:blank
