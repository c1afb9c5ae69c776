//! One browser, whichever it is, with what a knitter does in it: opens, types, chooses, presses, reads.

use crate::{folder::Folder, idle, needs::Needs};
use anyhow::{Context, Result, bail, ensure};
use loopwright_tests::{
    chromium::{Chromium, Extent, View},
    company::Afterwards,
    drive::{self, STARTED},
    firefox::Firefox,
    webkit::WebKit,
};
use serde_json::{Value, json};
use std::time::Duration;
use thirtyfour::{By, Key, TypingData, WebDriver, WebElement};

/// Notes what goes wrong in the page from here on.
const LISTEN: &str = "
    window.faults = [];
    addEventListener('securitypolicyviolation', (event) => faults.push(`forbidden: ${event.violatedDirective} ${event.blockedURI}`));
    addEventListener('error', (event) => faults.push(String(event.message)));
    addEventListener('unhandledrejection', (event) => faults.push(String(event.reason)));
";

/// Which browser.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Engine {
    /// Chromium.
    Chromium,
    /// Firefox, the release with long support.
    Firefox,
    /// WebKitGTK.
    WebKit,
}

/// Whether a browser lets pages keep anything.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Storage {
    /// As it comes.
    Allowed,
    /// As its settings can be.
    Denied,
}

/// A running browser; it ends when this is dropped.
pub struct Browser {
    /// The session.
    pub driver: WebDriver,
    inner: Inner,
}

/// Whether a browser is for one scenario only.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Reuse {
    /// It has a profile or preferences of its own.
    Once,
    /// Another scenario may have it.
    Again,
}

/// What keeps the processes.
enum Inner {
    Chromium(Box<Chromium>),
    Firefox(Box<Firefox>, Reuse),
    WebKit(#[expect(dead_code, reason = "held for its processes")] Box<WebKit>),
}

impl Browser {
    /// Starts one on a profile, or one that others had where that will do. WebKit's driver keeps none, and has no switch that denies storage.
    pub async fn start(engine: Engine, needs: Needs, profile: &Folder, storage: Storage) -> Result<Self> {
        Ok(match engine {
            Engine::Chromium => {
                let (extent, preferences) = match storage {
                    Storage::Allowed => (needs.extent(), json!({})),
                    // The engine alone has no preferences.
                    Storage::Denied => (
                        Extent::Whole,
                        json!({ "profile.default_content_setting_values.cookies": 2 }),
                    ),
                };
                let inner = Chromium::start_with(extent, profile.path(), preferences).await?;
                let driver = inner.driver.clone();
                let inner = Inner::Chromium(Box::new(inner));
                Self { driver, inner }
            }
            Engine::Firefox => {
                let alone = async |preferences| Firefox::start(profile.path(), &preferences, Afterwards::Stays).await;
                let (inner, reuse) = match (needs, storage) {
                    (Needs::Engine, Storage::Allowed) => (idle::firefox().await?, Reuse::Again),
                    (Needs::OwnProfile | Needs::Whole, Storage::Allowed) => (alone(json!({})).await?, Reuse::Once),
                    (_, Storage::Denied) => {
                        let preferences = json!({ "network.cookie.cookieBehavior": 2 });
                        (alone(preferences).await?, Reuse::Once)
                    }
                };
                let driver = inner.driver.clone();
                let inner = Inner::Firefox(Box::new(inner), reuse);
                Self { driver, inner }
            }
            Engine::WebKit => {
                ensure!(
                    storage == Storage::Allowed,
                    "WebKit's driver has no switch that denies storage"
                );
                let inner = WebKit::start(profile.path()).await?;
                let driver = inner.driver.clone();
                let inner = Inner::WebKit(Box::new(inner));
                Self { driver, inner }
            }
        })
    }

    /// Leaves the browser to another scenario, if it may be used again, and ends it if not.
    pub async fn rest(self) {
        match self.inner {
            Inner::Firefox(firefox, Reuse::Again) => idle::rest(*firefox).await,
            _ => self.quit().await,
        }
    }

    /// Ends the session. The processes end with the value, also if this fails.
    pub async fn quit(self) {
        let quitting = self.driver.clone().quit();
        let _ = tokio::time::timeout(Duration::from_secs(10), quitting).await;
    }

    /// Leaves the session as it is: the browser is gone, and there is nothing to take leave of.
    pub fn forget(&self) {
        let _ = self.driver.clone().leak();
    }

    /// Gives the page this size and light where the browser can, a window of about that size where it cannot.
    pub async fn look(&self, view: View) -> Result<()> {
        match &self.inner {
            Inner::Chromium(chromium) => chromium.look(view).await,
            Inner::Firefox(firefox, _) => firefox.look(view).await,
            Inner::WebKit(_) => {
                let driver = &self.driver;
                driver.set_window_rect(0, 0, view.width, view.height).await?;
                Ok(())
            }
        }
    }

    /// Shows the page as a printer would see it on a dark device. Only Chromium can.
    pub async fn put_on_paper(&self) -> Result<()> {
        let Inner::Chromium(chromium) = &self.inner else {
            bail!("only Chromium shows the page on paper");
        };
        let dark = json!([{ "name": "prefers-color-scheme", "value": "dark" }]);
        let paper = json!({ "media": "print", "features": dark });
        chromium.tell("Emulation.setEmulatedMedia", paper).await.map(drop)
    }

    /// Has this window be the one in front. Only Chromium can.
    pub async fn bring_to_front(&self) -> Result<()> {
        let Inner::Chromium(chromium) = &self.inner else {
            bail!("only Chromium brings a window to the front");
        };
        chromium.tell("Page.bringToFront", json!({})).await.map(drop)
    }

    /// Opens an address afresh and waits until the app runs there.
    pub async fn open(&self, address: &str) -> Result<()> {
        self.leave().await?;
        self.driver.goto(address).await?;
        self.until(STARTED).await?;
        self.run(LISTEN).await?;
        Ok(())
    }

    /// Leaves the page.
    pub async fn leave(&self) -> Result<()> {
        Ok(self.driver.goto("about:blank").await?)
    }

    /// Reloads as a page does, not as a driver does (that would go past the offline copy in some browsers).
    pub async fn reload(&self) -> Result<()> {
        self.run("window.leaving = true; setTimeout(() => location.reload(), 0)")
            .await?;
        self.until("!window.leaving").await?;
        self.until(STARTED).await
    }

    /// Goes to another page of the app by its address, without a reload, and waits until it is drawn.
    pub async fn go(&self, hash: &str) -> Result<()> {
        const GO: &str = "const [hash, done] = arguments;
            const drawn = () => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => done(true), 0)));
            if (new URL(hash, location).href === location.href) return drawn();
            addEventListener('hashchange', drawn, { once: true });
            location.hash = hash;";
        self.driver.execute_async(GO, vec![json!(hash)]).await?;
        Ok(())
    }

    /// Waits until the page has drawn what it knows.
    pub async fn settle(&self) -> Result<()> {
        const FRAMES: &str = "const done = arguments[arguments.length - 1];
            requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => done(true), 0)));";
        self.driver.execute_async(FRAMES, []).await?;
        Ok(())
    }

    /// Waits until an expression is true in the page.
    pub async fn until(&self, expression: &str) -> Result<()> {
        drive::until(&self.driver, expression).await
    }

    /// Runs a script.
    pub async fn run(&self, script: &str) -> Result<Value> {
        self.ask(script, []).await
    }

    /// The value of an expression.
    pub async fn look_up(&self, expression: &str) -> Result<Value> {
        self.run(&format!("return ({expression})")).await
    }

    /// Runs a script with arguments.
    pub async fn ask<const N: usize>(&self, script: &str, arguments: [Value; N]) -> Result<Value> {
        let value = self.driver.execute(script, arguments.to_vec()).await?;
        Ok(value.json().clone())
    }

    /// The one element there; a page that is still being drawn is waited for.
    pub async fn find(&self, css: &str) -> Result<WebElement> {
        if let Ok(found) = self.driver.find(By::Css(css)).await {
            return Ok(found);
        }
        let waited = self.until(&format!("document.querySelector({css:?})")).await;
        waited.with_context(|| format!("there is no {css}"))?;
        Ok(self.driver.find(By::Css(css)).await?)
    }

    /// Whether there is such an element, shown. An answer that is dimmed is for other numbers than those that stand there,
    /// and counts as none.
    pub async fn shows(&self, css: &str) -> Result<bool> {
        for element in self
            .driver
            .find_all(By::Css(format!(":not(.stale) > :is({css})")))
            .await?
        {
            if element.is_displayed().await? {
                return Ok(true);
            }
        }
        Ok(false)
    }

    /// What can be read there, on one line.
    pub async fn text(&self, css: &str) -> Result<String> {
        Ok(one_line(&self.find(css).await?.text().await?))
    }

    /// What stands in a field.
    pub async fn value(&self, css: &str) -> Result<String> {
        Ok(self.find(css).await?.prop("value").await?.unwrap_or_default())
    }

    /// Types into a field, over what stands there.
    pub async fn type_into(&self, css: &str, text: &str) -> Result<()> {
        let field = self.find(css).await?;
        if !self.value(css).await?.is_empty() {
            field.send_keys(Key::Control + "a").await?;
            field.send_keys(Key::Backspace).await?;
        }
        // WebKit's driver refuses to type nothing.
        if !text.is_empty() {
            field.send_keys(text).await?;
        }
        Ok(())
    }

    /// Puts any text into a field at once, over what stands there, and answers what the field made of it. For texts
    /// that a driver's keyboard cannot type.
    pub async fn paste(&self, css: &str, text: &str) -> Result<String> {
        const PASTE: &str = "const field = document.querySelector(arguments[0]);
            field.focus();
            field.value = arguments[1];
            const made = field.value;
            field.dispatchEvent(new InputEvent('input', { bubbles: true, inputType: 'insertFromPaste' }));
            return made;";
        let value = self.ask(PASTE, [json!(css), json!(text)]).await?;
        Ok(value.as_str().unwrap_or_default().to_owned())
    }

    /// Chooses by the stored key.
    pub async fn choose(&self, css: &str, key: &str) -> Result<()> {
        let option = self.find(&format!("{css} option[value='{key}']")).await?;
        option.click().await?;
        self.until(&format!("document.querySelector({css:?}).value === {key:?}"))
            .await
    }

    /// Presses what can be pressed there.
    pub async fn press(&self, css: &str) -> Result<()> {
        let element = self.find(css).await?;
        self.tap(&element).await
    }

    /// Presses the button with these words on it, inside an element.
    pub async fn press_button(&self, within: &str, words: &str) -> Result<()> {
        let buttons = format!("{within} button");
        self.find(&buttons).await?;
        for button in self.driver.find_all(By::Css(buttons)).await? {
            if one_line(&button.text().await?) == words {
                return self.tap(&button).await;
            }
        }
        bail!("there is no button \"{words}\" in {within}")
    }

    /// Taps; once more where the page was still moving when the tap came. Something that stays in the way is a fault.
    async fn tap(&self, element: &WebElement) -> Result<()> {
        if element.click().await.is_ok() {
            return Ok(());
        }
        self.settle().await?;
        Ok(element.click().await?)
    }

    /// Keys to whatever has the focus.
    pub async fn keys(&self, keys: impl Into<TypingData>) -> Result<()> {
        self.driver.action_chain().send_keys(keys).perform().await?;
        Ok(())
    }
}

/// The script that gives the words of an element as they are read, on one line.
pub fn words_of(css: &str) -> String {
    format!("document.querySelector({css:?})?.innerText.replace(/\\s+/g, ' ').trim()")
}

/// Text as it is read: whatever the spaces and breaks, one line.
pub fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
