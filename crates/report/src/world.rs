//! What a document may see while it is set: our template, this plan's data and drawings, our
//! fonts. No clock, no files, no network, no packages.

use crate::fonts::faces;
use std::collections::HashMap;
use std::path::PathBuf;
use std::sync::{Arc, OnceLock};
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};

/// The template's files.
const TEMPLATE: [(&str, &str); 3] = [
    ("sheet.typ", include_str!("../template/sheet.typ")),
    ("parts.typ", include_str!("../template/parts.typ")),
    ("lift.typ", include_str!("../template/lift.typ")),
];

/// What does not change from one document to the next: made once, shared.
pub(crate) struct Shop {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    main: FileId,
    template: HashMap<FileId, Source>,
}

impl Shop {
    /// The template parsed, the library built, the fonts read.
    pub(crate) fn shared() -> Option<Arc<Self>> {
        static SHOP: OnceLock<Option<Arc<Shop>>> = OnceLock::new();
        SHOP.get_or_init(|| {
            let mut template = HashMap::new();
            for (name, text) in TEMPLATE {
                let id = file_id(name)?;
                template.insert(id, Source::new(id, text.to_owned()));
            }
            Some(Arc::new(Self {
                library: LazyHash::new(Library::default()),
                book: LazyHash::new(FontBook::from_fonts(faces())),
                main: file_id(TEMPLATE[0].0)?,
                template,
            }))
        })
        .clone()
    }
}

/// One document: the shop and the files of this plan.
pub(crate) struct Desk {
    shop: Arc<Shop>,
    files: HashMap<FileId, Bytes>,
}

impl Desk {
    pub(crate) fn new(shop: Arc<Shop>) -> Self {
        Self { shop, files: HashMap::new() }
    }
    /// Puts a file on the desk. Names repeat from document to document, as Typst keeps each.
    pub(crate) fn put(&mut self, name: &str, bytes: Vec<u8>) -> Option<()> {
        self.files.insert(file_id(name)?, Bytes::new(bytes));
        Some(())
    }
}

fn file_id(name: &str) -> Option<FileId> {
    let path = VirtualPath::new(name).ok()?;
    Some(RootedPath::new(VirtualRoot::Project, path).intern())
}

impl World for Desk {
    fn library(&self) -> &LazyHash<Library> {
        &self.shop.library
    }
    fn book(&self) -> &LazyHash<FontBook> {
        &self.shop.book
    }
    fn main(&self) -> FileId {
        self.shop.main
    }
    fn source(&self, id: FileId) -> FileResult<Source> {
        self.shop.template.get(&id).cloned().ok_or_else(|| FileError::NotFound(PathBuf::new()))
    }
    fn file(&self, id: FileId) -> FileResult<Bytes> {
        match self.files.get(&id) {
            Some(bytes) => Ok(bytes.clone()),
            None => self.source(id).map(|s| Bytes::from_string(s.text().to_owned())),
        }
    }
    fn font(&self, index: usize) -> Option<Font> {
        faces().get(index).cloned()
    }
    fn today(&self, _offset: Option<Duration>) -> Option<Datetime> {
        None
    }
}
