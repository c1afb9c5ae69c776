//! A real server with our example configuration, on a port and in a folder of its own; it ends by its id.

use anyhow::{Context, Result, ensure};
use loopwright_tests::drive::free_port;
use std::{
    env, fs,
    path::{Path, PathBuf},
    process::{Command, Stdio},
    thread,
    time::Duration,
};
use xtask::{files, house, run::Ending, yardstick::Patience};

/// Where the site lies below the server's root.
pub const FOLDER: &str = "/crafts/loopwright/";

/// A server that runs.
pub struct Host {
    /// The port it listens on.
    pub port: u16,
    place: PathBuf,
    process: Ending,
}

/// What nginx wants to be told beside a site. It runs in front, as whoever runs the tests, and writes into its folder only.
const NGINX: &str = "daemon off;
pid {place}/pid;
error_log stderr;
user root;
load_module /usr/lib/nginx/modules/ngx_http_brotli_static_module.so;
events {}
http {
    access_log off;
    client_body_temp_path {place}/body;
    proxy_temp_path {place}/proxy;
    fastcgi_temp_path {place}/fastcgi;
    uwsgi_temp_path {place}/uwsgi;
    scgi_temp_path {place}/scgi;
    include {place}/site.conf;
}
";

/// What Apache wants to be told beside a site.
const APACHE: &str = "ServerRoot {place}
DefaultRuntimeDir {place}
ServerName 127.0.0.1
Listen 127.0.0.1:{port}
PidFile {place}/pid
ErrorLog /dev/stderr
User www-data
Group www-data
TypesConfig /dev/null
LoadModule mpm_event_module /usr/lib/apache2/modules/mod_mpm_event.so
LoadModule authz_core_module /usr/lib/apache2/modules/mod_authz_core.so
LoadModule dir_module /usr/lib/apache2/modules/mod_dir.so
LoadModule mime_module /usr/lib/apache2/modules/mod_mime.so
LoadModule headers_module /usr/lib/apache2/modules/mod_headers.so
LoadModule rewrite_module /usr/lib/apache2/modules/mod_rewrite.so
DocumentRoot {place}/root
<Directory {place}/root>
    Options FollowSymLinks
    AllowOverride FileInfo Indexes
    Require all granted
</Directory>
";

impl Host {
    /// nginx with `web/hosting/nginx.conf`.
    pub fn nginx() -> Result<Self> {
        let (port, place) = (free_port()?, place("nginx")?);
        let listen = format!("listen 127.0.0.1:{port};");
        let root = format!("root {}/root;", place.display());
        let site = put(&example("nginx.conf")?, "listen 80;", &listen)?;
        let site = put(&site, "root /var/www/loopwright;", &root)?;
        fs::write(place.join("site.conf"), site)?;
        let own = write_own(&place, port, NGINX)?;
        let mut command = Command::new("nginx");
        command.arg("-p").arg(&place).arg("-c").arg(own);
        Self::start(port, place, command)
    }

    /// Apache with `web/hosting/apache.conf` as the folder's `.htaccess`.
    pub fn apache() -> Result<Self> {
        let (port, place) = (free_port()?, place("apache")?);
        let own = write_own(&place, port, APACHE)?;
        let mut command = Command::new("apache2");
        command.args(["-D", "FOREGROUND", "-f"]).arg(own);
        let host = Self::start(port, place, command)?;
        fs::write(host.site().join(".htaccess"), example("apache.conf")?)?;
        Ok(host)
    }

    fn start(port: u16, place: PathBuf, mut command: Command) -> Result<Self> {
        let name = command.get_program().to_string_lossy().into_owned();
        let process = command.stdin(Stdio::null()).spawn();
        let process = process.with_context(|| format!("{name} could not be started"))?;
        Ok(Self {
            port,
            place,
            process: Ending(process),
        })
    }

    /// The folder of the site.
    pub fn site(&self) -> PathBuf {
        site(&self.place)
    }

    /// A folder for what a browser writes.
    pub fn home(&self) -> Result<PathBuf> {
        let home = self.place.join("home");
        fs::create_dir_all(&home)?;
        Ok(home)
    }

    /// Puts a page of someone else's at the server's root.
    pub fn write(&self, name: &str, html: &str) -> Result<()> {
        Ok(fs::write(self.place.join("root").join(name), html)?)
    }
}

impl Drop for Host {
    /// Asks the server to end, since one that is ended by force would leave those it started behind.
    fn drop(&mut self) {
        let child = &mut self.process.0;
        let _ = Command::new("kill").arg(child.id().to_string()).status();
        let mut patience = Patience::of(Duration::from_secs(5));
        while matches!(child.try_wait(), Ok(None)) && !patience.is_over() {
            thread::sleep(Duration::from_millis(30));
        }
        let _ = fs::remove_dir_all(&self.place);
    }
}

/// A folder with the built site in it. Not in the target folder: a server that gives up its rights may not read there.
fn place(name: &str) -> Result<PathBuf> {
    let dist = env::var_os("LOOPWRIGHT_DIST").map_or_else(|| house::root().join("dist"), PathBuf::from);
    let place = env::temp_dir().join(format!("loopwright-{name}-{}", std::process::id()));
    let built = files::read(&dist).context("run `cargo xtask build` first")?;
    files::replace(&site(&place), &built)?;
    Ok(place)
}

fn site(place: &Path) -> PathBuf {
    place.join("root").join(FOLDER.trim_matches('/'))
}

fn example(name: &str) -> Result<String> {
    let place = house::root().join("web/hosting").join(name);
    fs::read_to_string(&place).with_context(|| format!("cannot read {}", place.display()))
}

/// The example with one of the lines that are the reader's to change.
fn put(example: &str, line: &str, own: &str) -> Result<String> {
    ensure!(example.matches(line).count() == 1, "the example has no line `{line}`");
    Ok(example.replace(line, own))
}

fn write_own(place: &Path, port: u16, text: &str) -> Result<PathBuf> {
    let text = text.replace("{place}", &place.to_string_lossy());
    let file = place.join("server.conf");
    fs::write(&file, text.replace("{port}", &port.to_string()))?;
    Ok(file)
}
