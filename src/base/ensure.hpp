#pragma once

#include <string_view>

namespace fw {

/// Runs before the program gives up on a broken invariant; the app saves the open lesson in it.
/// One hook for the process; a null hook does nothing.
using LastWords = void (*)();
void set_last_words(LastWords hook);

/// Checks an invariant, in release builds too: on failure runs the last words, prints `sentence`
/// and where it was checked to standard error, and aborts.
[[noreturn]] void broken_invariant(std::string_view sentence, const char* file, int line);

}  // namespace fw

// A macro, since std::source_location is not in every compiler that must build this.
#define ensure(condition, sentence) \
  ((condition) ? static_cast<void>(0) : ::fw::broken_invariant((sentence), __FILE__, __LINE__))
