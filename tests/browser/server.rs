//! A server for the built page that can misbehave, path by path, and stop.

use anyhow::{Context, Result};
use std::{
    collections::{BTreeMap, BTreeSet},
    net::{Shutdown, SocketAddr, TcpListener, TcpStream},
    path::{Path, PathBuf},
    sync::{
        Arc, Mutex, MutexGuard, PoisonError,
        atomic::{AtomicBool, Ordering},
    },
    thread::{self, JoinHandle},
    time::Duration,
};
use xtask::{
    csp, http, names,
    site::{self, Response},
};

/// What becomes of one file on its way.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Spoil {
    /// The connection is closed without an answer.
    NoAnswer,
    /// It is not there.
    Missing,
    /// A page comes in its place, as from the sign-in of a hotel's network.
    Page,
    /// Half of it comes.
    Half,
    /// It comes under the type of plain text.
    Plain,
    /// The connection stays open, and nothing comes until all is mended.
    Never,
}

/// All the ways in which something goes wrong at once with any file.
pub const WAYS: [Spoil; 4] = [Spoil::NoAnswer, Spoil::Missing, Spoil::Page, Spoil::Half];

/// Serves until it is stopped or dropped.
pub struct Server {
    address: SocketAddr,
    shared: Arc<Shared>,
    thread: Option<JoinHandle<()>>,
}

struct Shared {
    stopped: AtomicBool,
    state: Mutex<State>,
}

struct State {
    root: PathBuf,
    mount: String,
    spoiled: BTreeMap<String, Spoil>,
    pages: BTreeMap<String, String>,
    gives_leave: bool,
    sends_self: bool,
    asked: Vec<String>,
}

impl Server {
    /// Serves a folder.
    pub fn start(root: &Path) -> Result<Self> {
        let listener = listen()?;
        let address = listener.local_addr()?;
        let shared = Arc::new(Shared {
            stopped: AtomicBool::new(false),
            state: Mutex::new(State {
                root: root.to_path_buf(),
                mount: "/".to_owned(),
                spoiled: BTreeMap::new(),
                pages: BTreeMap::new(),
                gives_leave: true,
                sends_self: false,
                asked: Vec::new(),
            }),
        });
        let inner = Arc::clone(&shared);
        let thread = thread::spawn(move || accept(&listener, &inner));
        Ok(Self {
            address,
            shared,
            thread: Some(thread),
        })
    }

    /// The address of the page.
    pub fn url(&self) -> String {
        format!("http://{}{}", self.address, self.state().mount)
    }

    /// The same, as another site.
    pub fn other_site(&self) -> String {
        format!("http://localhost:{}{}", self.address.port(), self.state().mount)
    }

    /// From now on the folder stands at this path, `/` at both ends.
    pub fn mount(&self, path: &str) {
        path.clone_into(&mut self.state().mount);
    }

    /// From now on this folder is served.
    pub fn serve(&self, root: &Path) {
        self.state().root = root.to_path_buf();
    }

    /// From now on this file (a path inside the folder, without the hash in its name) is spoiled.
    pub fn spoil(&self, path: &str, how: Spoil) {
        self.state().spoiled.insert(path.to_owned(), how);
    }

    /// From now on nothing is spoiled.
    pub fn mend(&self) {
        self.state().spoiled.clear();
    }

    /// From now on no header gives other sites leave to have the files, as on a host that was never told to.
    pub fn withhold_leave(&self) {
        self.state().gives_leave = false;
    }

    /// From now on the policy that is sent as a header names the page's address as `'self'`.
    pub fn send_self(&self) {
        self.state().sends_self = true;
    }

    /// Serves a page of someone else's, at a path from the root.
    pub fn page(&self, path: &str, html: &str) {
        self.state().pages.insert(path.to_owned(), html.to_owned());
    }

    /// Every path that was asked for.
    pub fn asked(&self) -> Vec<String> {
        self.state().asked.clone()
    }

    /// Stops, and makes sure of it.
    pub fn stop(&mut self) -> Result<()> {
        self.end();
        anyhow::ensure!(TcpStream::connect(self.address).is_err(), "the server still answers");
        Ok(())
    }

    fn end(&mut self) {
        self.shared.stopped.store(true, Ordering::SeqCst);
        // Wakes the one that waits for a connection.
        let _ = TcpStream::connect(self.address);
        if let Some(thread) = self.thread.take() {
            let _ = thread.join();
        }
    }

    fn state(&self) -> MutexGuard<'_, State> {
        self.shared.state()
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.end();
    }
}

impl Shared {
    fn state(&self) -> MutexGuard<'_, State> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Whether nothing may come for this path now.
    fn never_answers(&self, path: &str) -> bool {
        let state = self.state();
        let spoiled = path
            .strip_prefix(&state.mount)
            .and_then(|inside| state.spoiled_as(inside));
        spoiled == Some(Spoil::Never) && !self.stopped.load(Ordering::SeqCst)
    }
}

impl State {
    fn spoiled_as(&self, inside: &str) -> Option<Spoil> {
        self.spoiled.get(&names::without_hash(inside)).copied()
    }
}

fn accept(listener: &TcpListener, shared: &Arc<Shared>) {
    for stream in listener.incoming() {
        if shared.stopped.load(Ordering::SeqCst) {
            return;
        }
        let Ok(stream) = stream else { continue };
        let shared = Arc::clone(shared);
        thread::spawn(move || {
            // A browser that goes away in the middle is no error of ours.
            let _ = http::converse(&stream, &|path| {
                answer(&shared, path).unwrap_or_else(|| {
                    let _ = stream.shutdown(Shutdown::Both);
                    missing()
                })
            });
        });
    }
}

/// The answer for a path as asked; `None` where none is given.
fn answer(shared: &Shared, asked: &str) -> Option<Response> {
    let path = asked.split(['?', '#']).next().unwrap_or_default();
    shared.state().asked.push(asked.to_owned());
    while shared.never_answers(path) {
        thread::sleep(Duration::from_millis(50));
    }
    let state = shared.state();
    if let Some(html) = state.pages.get(path) {
        return Some(page(html));
    }
    let Some(inside) = path.strip_prefix(&state.mount) else {
        return Some(missing());
    };
    let spoiled = state.spoiled_as(inside);
    let mut response = site::respond(&state.root, &format!("/{inside}"));
    if !state.gives_leave {
        let gives_leave = |name: &str| name == "Access-Control-Allow-Origin" || name == "Cross-Origin-Resource-Policy";
        response.headers.retain(|(name, _)| !gives_leave(name));
    }
    if state.sends_self {
        for (_, value) in response
            .headers
            .iter_mut()
            .filter(|(name, _)| name == "Content-Security-Policy")
        {
            *value = value.replace(csp::OWN, "'self'");
        }
    }
    match spoiled {
        Some(Spoil::NoAnswer) => return None,
        Some(Spoil::Missing) => return Some(missing()),
        Some(Spoil::Page) => {
            return Some(page("<!doctype html><title>Sign in</title><p>Room number?"));
        }
        Some(Spoil::Half) => response.body.truncate(response.body.len() / 2),
        Some(Spoil::Plain) => be_plain(&mut response),
        Some(Spoil::Never) | None => {}
    }
    Some(response)
}

/// Listens on a port that no server of this run had before. What a page keeps belongs to its address, and a browser that is
/// used again must not meet what an earlier scenario kept.
fn listen() -> Result<TcpListener> {
    static TAKEN: Mutex<BTreeSet<u16>> = Mutex::new(BTreeSet::new());
    // Those that were taken before are held until there is another one, so that it is another one.
    let mut refused = Vec::new();
    loop {
        let listener = TcpListener::bind("127.0.0.1:0")?;
        let port = listener.local_addr()?.port();
        if TAKEN.lock().unwrap_or_else(PoisonError::into_inner).insert(port) {
            return Ok(listener);
        }
        refused.push(listener);
    }
}

fn be_plain(response: &mut Response) {
    for (_, value) in response.headers.iter_mut().filter(|(name, _)| name == "Content-Type") {
        "text/plain; charset=utf-8".clone_into(value);
    }
}

fn page(html: &str) -> Response {
    let kind = "text/html; charset=utf-8";
    site::answer(200, kind, &[], html.as_bytes().to_vec())
}

fn missing() -> Response {
    site::answer(404, "text/plain", &[], b"Not here.\n".to_vec())
}

/// A folder or file that the environment names, with what to do where it does not.
pub fn named(variable: &str, fallback: &str) -> Result<PathBuf> {
    let place = std::env::var_os(variable).map_or_else(|| xtask::house::root().join(fallback), PathBuf::from);
    place.canonicalize().with_context(|| {
        format!(
            "{} is missing: run `cargo xtask build`, or set {variable}",
            place.display()
        )
    })
}
