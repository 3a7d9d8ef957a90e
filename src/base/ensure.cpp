#include "base/ensure.hpp"

#include <cstdio>
#include <cstdlib>

namespace fw {
namespace {
LastWords last_words = nullptr;
}

void set_last_words(LastWords hook) { last_words = hook; }

void broken_invariant(std::string_view sentence, const char* file, int line) {
  // Taken out first, so that a failure inside the hook cannot call it again.
  const LastWords hook = last_words;
  last_words = nullptr;
  if (hook != nullptr) {
    hook();
  }
  std::fprintf(stderr, "foldwright: internal error at %s:%d: %.*s\n", file, line, static_cast<int>(sentence.size()),
               sentence.data());
  std::abort();
}

}  // namespace fw
