// What the program asks of its browser: src/web/library.hpp. Written with "function", since Emscripten 3.1.6 copies these
// texts into its own and does not know every arrow.
mergeInto(LibraryManager.library, {
  $pageText: function(text) {
    if (text === null || text === undefined) return 0;
    const size = lengthBytesUTF8(text) + 1;
    const place = _malloc(size);
    stringToUTF8(text, place, size);
    return place;
  },
  page_stored__deps: ['$pageText'],
  page_stored: function(name) {
    try {
      return pageText(localStorage.getItem(UTF8ToString(name)));
    } catch (refused) {
      return 0;
    }
  },
  page_store: function(name, text) {
    try {
      localStorage.setItem(UTF8ToString(name), UTF8ToString(text));
      return 1;
    } catch (refused) {
      return 0;
    }
  },
  page_unstore: function(name) {
    try {
      localStorage.removeItem(UTF8ToString(name));
      return 1;
    } catch (refused) {
      return 0;
    }
  },
  page_stored_names__deps: ['$pageText'],
  page_stored_names: function() {
    try {
      return pageText(Object.keys(localStorage).join('\n'));
    } catch (refused) {
      return 0;
    }
  },
  page_download: function(name, bytes, size) {
    Module.page.download(UTF8ToString(name), HEAPU8.slice(bytes, bytes + size));
  },
  page_copy: function(text) {
    Module.page.copy(UTF8ToString(text));
  },
  page_pasted__deps: ['$pageText'],
  page_pasted: function() {
    return pageText(Module.page.pasted);
  },
  page_full_screen: function(on) {
    Module.page.fullScreen(on !== 0);
  },
});
