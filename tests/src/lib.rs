//! What the checks share. The checks themselves are in the folders beside.

#[cfg(feature = "driven")]
pub mod chromium;
#[cfg(feature = "driven")]
pub mod company;
#[cfg(feature = "driven")]
pub mod drive;
#[cfg(feature = "driven")]
pub mod firefox;
#[cfg(feature = "driven")]
pub mod webkit;
