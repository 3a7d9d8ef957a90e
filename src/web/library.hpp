#pragma once

// The functions of src/web/library.js, which know the browser. Texts are UTF-8; one that is returned is freed by who
// asked, and null where there is none.
extern "C" {
char* page_stored(const char* name);
int page_store(const char* name, const char* text);  ///< 1 when it lies there, 0 when the browser refuses
int page_unstore(const char* name);
char* page_stored_names();  ///< one a line
void page_download(const char* name, const char* bytes, int size);
void page_copy(const char* text);
char* page_pasted();
void page_full_screen(int on);
}
