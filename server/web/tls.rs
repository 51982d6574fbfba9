//! https spoken by the program itself, with a certificate of the installation's.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use rustls_pki_types::pem::{self, PemObject};
use rustls_pki_types::{CertificateDer, PrivateKeyDer};
use tokio_rustls::TlsAcceptor;
use tokio_rustls::rustls::{self, ServerConfig};

/// Why the certificate cannot be used.
#[derive(Debug, thiserror::Error)]
pub enum TlsFault {
    /// A file that cannot be read or holds nothing of the kind.
    #[error("{} cannot be read as PEM: {cause}", path.display())]
    File {
        /// The file.
        path: PathBuf,
        /// Why.
        cause: pem::Error,
    },
    /// Certificate and key do not go together.
    #[error("the certificate and the key cannot be used together: {0}")]
    Pair(#[from] rustls::Error),
}

/// Reads a certificate with its chain, and its key, both PEM.
///
/// # Errors
/// [`TlsFault`], a sentence for the terminal.
pub fn acceptor(certificate: &Path, key: &Path) -> Result<TlsAcceptor, TlsFault> {
    let unreadable = |path: &Path| {
        let path = path.to_owned();
        move |cause| TlsFault::File { path, cause }
    };
    let chain = CertificateDer::pem_file_iter(certificate)
        .and_then(Iterator::collect::<Result<Vec<_>, _>>)
        .map_err(unreadable(certificate))?;
    let key = PrivateKeyDer::from_pem_file(key).map_err(unreadable(key))?;
    let provider = Arc::new(rustls::crypto::aws_lc_rs::default_provider());
    let config = ServerConfig::builder_with_provider(provider)
        .with_safe_default_protocol_versions()?
        .with_no_client_auth()
        .with_single_cert(chain, key)?;
    Ok(TlsAcceptor::from(Arc::new(config)))
}
